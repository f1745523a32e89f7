package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Formula;
import java.util.List;

/** Sheets {@code Cores} and {@code Warranty claims}: a date that is entered takes its line off what is still open. */
final class ReturnSheets {
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
        SheetTable.add(
                book,
                "Cores",
                "Cores to send back before the deposit is lost",
                remark + ". Enter the day it was sent; the deposit at stake updates itself.",
                List.of(
                        CoreColumns.LAST_DAY,
                        CoreColumns.DAYS_LEFT,
                        CoreColumns.STATE,
                        CoreColumns.SUPPLIER,
                        CoreColumns.PART,
                        TableColumn.wrapped("Description", 24, core -> descriptions.of(core.part())),
                        CoreColumns.DEPOT,
                        CoreColumns.TRUCK,
                        CoreColumns.CYLINDER,
                        CoreColumns.FITTED,
                        CoreColumns.SERIAL,
                        CoreColumns.DEPOSIT,
                        TableColumn.date("Sent on", 12, core -> null),
                        TableColumn.<CoreOwed>money(
                                        "At stake",
                                        11,
                                        core -> new Formula(
                                                "IF(M#=\"\",L#,0)",
                                                core.deposit().doubleValue()))
                                .summed()),
                plan.cores());
    }

    private void claims(Book book) {
        SheetTable.add(
                book,
                "Warranty claims",
                "Failures under warranty, with the evidence",
                remark + ". Enter the day it was claimed; the open amount updates itself.",
                List.of(
                        ClaimColumns.REMOVED,
                        ClaimColumns.SUPPLIER,
                        ClaimColumns.PART,
                        ClaimColumns.SERIAL,
                        ClaimColumns.TRUCK,
                        TableColumn.text("VIN", 20, WarrantyClaim::vin),
                        ClaimColumns.CYLINDER,
                        ClaimColumns.FITTED,
                        TableColumn.count("Months in service", 8, WarrantyClaim::months),
                        TableColumn.count("Km in service", 9, WarrantyClaim::km),
                        TableColumn.count(
                                "Warranty, months",
                                9,
                                claim -> claim.warrantyMonths() == 0 ? null : claim.warrantyMonths()),
                        TableColumn.count(
                                "Warranty, km", 9, claim -> claim.warrantyKm() == 0 ? null : claim.warrantyKm()),
                        ClaimColumns.FAULT_CODES,
                        ClaimColumns.TESTS,
                        ClaimColumns.LACKING,
                        ClaimColumns.VALUE,
                        TableColumn.date("Claimed on", 12, claim -> null),
                        TableColumn.<WarrantyClaim>money(
                                        "Open",
                                        11,
                                        claim -> new Formula(
                                                "IF(Q#=\"\",P#,0)",
                                                claim.value().doubleValue()))
                                .summed()),
                plan.claims());
    }
}
