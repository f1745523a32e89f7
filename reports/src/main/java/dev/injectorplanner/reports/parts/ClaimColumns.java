package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.warranty.WarrantyClaim;
import dev.injectorplanner.reports.table.TableColumn;
import java.util.List;

/** What is told of failures under warranty, with the evidence. */
public final class ClaimColumns {
    static final TableColumn<WarrantyClaim> REMOVED = TableColumn.date("Removed", 12, WarrantyClaim::removedOn);
    static final TableColumn<WarrantyClaim> SUPPLIER = TableColumn.text("Supplier", 21, WarrantyClaim::supplier);
    static final TableColumn<WarrantyClaim> PART = TableColumn.text("Part", 10, WarrantyClaim::part);
    static final TableColumn<WarrantyClaim> SERIAL = TableColumn.text("Serial", 15, WarrantyClaim::serial);
    static final TableColumn<WarrantyClaim> TRUCK = TableColumn.text("Truck", 9, WarrantyClaim::truck);
    static final TableColumn<WarrantyClaim> DEPOT = TableColumn.text("Depot", 12, WarrantyClaim::depot);
    static final TableColumn<WarrantyClaim> CYLINDER = TableColumn.count("Cylinder", 8, WarrantyClaim::cylinder);
    static final TableColumn<WarrantyClaim> FITTED = TableColumn.date("Fitted", 12, WarrantyClaim::fittedOn);
    static final TableColumn<WarrantyClaim> FAULT_CODES =
            TableColumn.wrapped("Fault codes", 28, claim -> String.join("; ", claim.faultCodes()));
    static final TableColumn<WarrantyClaim> TESTS =
            TableColumn.wrapped("Tests", 28, claim -> String.join("; ", claim.tests()));
    static final TableColumn<WarrantyClaim> LACKING =
            TableColumn.wrapped("Missing evidence", 16, claim -> String.join(", ", claim.lacking()));
    static final TableColumn<WarrantyClaim> VALUE =
            TableColumn.<WarrantyClaim>money("Value", 11, WarrantyClaim::value).summed();

    private static final TableColumn<WarrantyClaim> SERIAL_OR_NOT = SERIAL.valued(ClaimColumns::serial);
    private static final TableColumn<WarrantyClaim> LACKING_OR_NOTHING =
            LACKING.valued(claim -> claim.lacking().isEmpty() ? "nothing" : String.join(", ", claim.lacking()));

    /** On the buyer's page. */
    public static final List<TableColumn<WarrantyClaim>> PAGE = List.of(
            TRUCK,
            CYLINDER,
            DEPOT,
            SUPPLIER,
            PART,
            SERIAL_OR_NOT,
            FITTED,
            REMOVED,
            FAULT_CODES,
            TESTS,
            LACKING_OR_NOTHING,
            VALUE);

    /** In the buyer's mail. */
    public static final List<TableColumn<WarrantyClaim>> MAIL =
            List.of(TRUCK, CYLINDER, PART, SUPPLIER, SERIAL_OR_NOT, FITTED, REMOVED, VALUE, LACKING_OR_NOTHING);

    private ClaimColumns() {}

    private static String serial(WarrantyClaim claim) {
        String serial = claim.serial();
        return serial == null ? "not recorded" : serial;
    }
}
