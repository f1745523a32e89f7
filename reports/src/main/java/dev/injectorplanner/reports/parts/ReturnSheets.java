package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.util.List;

/** Sheets {@code Cores} and {@code Warranty claims}: a date that is entered takes its line off what is still open. */
final class ReturnSheets {
    private static final List<SheetColumn> CLAIM_COLUMNS = List.of(
            SheetColumn.of("Removed", Format.DATE, 12),
            SheetColumn.of("Supplier", Format.TEXT, 21),
            SheetColumn.of("Part", Format.TEXT, 10),
            SheetColumn.of("Serial", Format.TEXT, 15),
            SheetColumn.of("Truck", Format.TEXT, 9),
            SheetColumn.of("VIN", Format.TEXT, 20),
            SheetColumn.of("Cylinder", Format.WHOLE, 8),
            SheetColumn.of("Fitted", Format.DATE, 12),
            SheetColumn.of("Months in service", Format.WHOLE, 8),
            SheetColumn.of("Km in service", Format.WHOLE, 9),
            SheetColumn.of("Warranty, months", Format.WHOLE, 9),
            SheetColumn.of("Warranty, km", Format.WHOLE, 9),
            SheetColumn.of("Fault codes", Format.WRAPPED, 28),
            SheetColumn.of("Tests", Format.WRAPPED, 28),
            SheetColumn.of("Missing evidence", Format.WRAPPED, 16),
            SheetColumn.summed("Value", Format.TWO_DECIMALS, 11),
            SheetColumn.of("Claimed on", Format.DATE, 12),
            SheetColumn.summed("Open", Format.TWO_DECIMALS, 11));

    private final Plan plan;
    private final String remark;
    private final Descriptions descriptions;

    ReturnSheets(Plan plan, String remark, Descriptions descriptions) {
        this.plan = plan;
        this.remark = remark;
        this.descriptions = descriptions;
    }

    void write(Book book) {
        cores(book);
        claims(book);
    }

    private void cores(Book book) {
        TableSheet sheet = book.table(
                "Cores",
                "Cores to send back before the deposit is lost",
                remark + ". Enter the day it was sent; the deposit at stake updates itself.",
                List.of(
                        SheetColumn.of("Last day", Format.DATE, 12),
                        SheetColumn.of("Days left", Format.WHOLE, 8),
                        SheetColumn.of("State", Format.TEXT, 22),
                        SheetColumn.of("Supplier", Format.TEXT, 22),
                        SheetColumn.of("Part", Format.TEXT, 12),
                        SheetColumn.of("Description", Format.WRAPPED, 24),
                        SheetColumn.of("Depot", Format.TEXT, 12),
                        SheetColumn.of("Truck", Format.TEXT, 9),
                        SheetColumn.of("Cylinder", Format.WHOLE, 8),
                        SheetColumn.of("Fitted", Format.DATE, 12),
                        SheetColumn.of("Serial of the old unit", Format.TEXT, 18),
                        SheetColumn.summed("Deposit", Format.TWO_DECIMALS, 11),
                        SheetColumn.of("Sent on", Format.DATE, 12),
                        SheetColumn.summed("At stake", Format.TWO_DECIMALS, 11)));
        for (CoreOwed core : plan.cores()) {
            sheet.row(
                    core.lastDay(),
                    core.daysLeft(),
                    state(core),
                    core.supplier(),
                    core.part(),
                    descriptions.of(core.part()),
                    core.depot(),
                    core.truck(),
                    core.cylinder(),
                    core.fittedOn(),
                    core.oldSerial(),
                    core.deposit(),
                    null,
                    new Formula("IF(M#=\"\",L#,0)", core.deposit().doubleValue()));
        }
        sheet.finish();
    }

    private static String state(CoreOwed core) {
        return switch (core.state()) {
            case PAST -> "overdue: ask the supplier";
            case SEND_NOW -> "send now";
            case OPEN -> "open";
        };
    }

    private void claims(Book book) {
        TableSheet sheet = book.table(
                "Warranty claims",
                "Failures under warranty, with the evidence",
                remark + ". Enter the day it was claimed; the open amount updates itself.",
                CLAIM_COLUMNS);
        for (WarrantyClaim claim : plan.claims()) {
            sheet.row(
                    claim.removedOn(),
                    claim.supplier(),
                    claim.part(),
                    claim.serial(),
                    claim.truck(),
                    claim.vin(),
                    claim.cylinder(),
                    claim.fittedOn(),
                    claim.months(),
                    claim.km(),
                    claim.warrantyMonths() == 0 ? null : claim.warrantyMonths(),
                    claim.warrantyKm() == 0 ? null : claim.warrantyKm(),
                    String.join("; ", claim.faultCodes()),
                    String.join("; ", claim.tests()),
                    String.join(", ", claim.lacking()),
                    claim.value(),
                    null,
                    new Formula("IF(Q#=\"\",P#,0)", claim.value().doubleValue()));
        }
        sheet.finish();
    }
}
