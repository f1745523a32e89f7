package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.reports.table.TableColumn;
import java.util.List;

/** What is told of old units owed back. */
public final class CoreColumns {
    static final TableColumn<CoreOwed> LAST_DAY = TableColumn.date("Last day", 12, CoreOwed::lastDay);
    static final TableColumn<CoreOwed> DAYS_LEFT = TableColumn.count("Days left", 8, CoreOwed::daysLeft);
    static final TableColumn<CoreOwed> STATE = TableColumn.text("State", 22, CoreColumns::state);
    static final TableColumn<CoreOwed> SUPPLIER = TableColumn.text("Supplier", 22, CoreOwed::supplier);
    static final TableColumn<CoreOwed> PART = TableColumn.text("Part", 12, CoreOwed::part);
    static final TableColumn<CoreOwed> DEPOT = TableColumn.text("Depot", 12, CoreOwed::depot);
    static final TableColumn<CoreOwed> TRUCK = TableColumn.text("Truck", 9, CoreOwed::truck);
    static final TableColumn<CoreOwed> CYLINDER = TableColumn.count("Cylinder", 8, CoreOwed::cylinder);
    static final TableColumn<CoreOwed> FITTED = TableColumn.date("Fitted", 12, CoreOwed::fittedOn);
    static final TableColumn<CoreOwed> SERIAL = TableColumn.text("Serial of the old unit", 18, CoreOwed::oldSerial);
    static final TableColumn<CoreOwed> DEPOSIT =
            TableColumn.<CoreOwed>money("Deposit", 11, CoreOwed::deposit).summed();

    private static final TableColumn<CoreOwed> SERIAL_OR_NOT = SERIAL.valued(CoreColumns::serial);

    /** On the buyer's page. */
    public static final List<TableColumn<CoreOwed>> PAGE = List.of(
            TRUCK,
            CYLINDER,
            DEPOT,
            SUPPLIER,
            PART,
            SERIAL_OR_NOT,
            LAST_DAY,
            STATE.valued(CoreColumns::stateAndDays),
            DEPOSIT);

    /** In the buyer's mail. */
    public static final List<TableColumn<CoreOwed>> MAIL =
            List.of(LAST_DAY, DAYS_LEFT, TRUCK, CYLINDER, PART, SUPPLIER, SERIAL_OR_NOT, DEPOSIT);

    private CoreColumns() {}

    private static String serial(CoreOwed core) {
        String serial = core.oldSerial();
        return serial == null ? "not recorded" : serial;
    }

    private static String state(CoreOwed core) {
        return switch (core.state()) {
            case PAST -> "overdue: ask the supplier";
            case SEND_NOW -> "send now";
            case OPEN -> "open";
        };
    }

    private static String stateAndDays(CoreOwed core) {
        String days = Figures.count(Math.abs(core.daysLeft()), "day", "days");
        return switch (core.state()) {
            case PAST -> "overdue by " + days + ": ask the supplier";
            case SEND_NOW, OPEN -> state(core) + ", " + (core.daysLeft() == 0 ? "the last day" : days + " left");
        };
    }
}
