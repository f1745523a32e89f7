package dev.injectorplanner.reports.coolant;

import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantWeek;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import java.util.List;

/** What is told of coolant, by week and by visit. Figures are the engine's; the workbook puts formulas over them. */
public final class CoolantColumns {
    static final TableColumn<CoolantWeek> DEPOT_AND_WEEK =
            TableColumn.text("Depot and week", 24, week -> week.depot() + " " + week.week());
    static final TableColumn<CoolantWeek> WEEKS_DEPOT = TableColumn.text("Depot", 13, CoolantWeek::depot);
    static final TableColumn<CoolantWeek> WEEK = TableColumn.text("Week", 11, CoolantWeek::week);
    static final TableColumn<CoolantWeek> MONDAY =
            TableColumn.date("Monday", 12, week -> week.week().monday());
    static final TableColumn<CoolantWeek> VISITS = TableColumn.count("Visits", 8, CoolantWeek::visits);
    static final TableColumn<CoolantWeek> DRAINED = litres("Drained", 10, CoolantWeek::drainedLitres);
    static final TableColumn<CoolantWeek> CONCENTRATE =
            litres("Concentrate to draw", 12, CoolantWeek::concentrateLitres);
    static final TableColumn<CoolantWeek> WATER = litres("Water to draw", 10, CoolantWeek::waterLitres);
    static final TableColumn<CoolantWeek> WASTE = litres("Old coolant to collect", 12, CoolantWeek::wasteLitres);
    static final TableColumn<CoolantWeek> CONCENTRATE_CONTAINERS = TableColumn.<CoolantWeek>count(
                    "Containers of concentrate", 11, CoolantWeek::concentrateContainers)
            .summed();
    static final TableColumn<CoolantWeek> WATER_CONTAINERS = TableColumn.<CoolantWeek>count(
                    "Containers of water", 11, CoolantWeek::waterContainers)
            .summed();
    static final TableColumn<CoolantWeek> WASTE_CONTAINERS = TableColumn.<CoolantWeek>count(
                    "Waste containers", 11, CoolantWeek::wasteContainers)
            .summed();

    static final TableColumn<CoolantNeed> DEPOT = TableColumn.text("Depot", 13, CoolantNeed::depot);
    static final TableColumn<CoolantNeed> VISIT_WEEK = TableColumn.text("Week", 11, CoolantNeed::week);
    static final TableColumn<CoolantNeed> TRUCK = TableColumn.text("Truck", 10, CoolantNeed::truck);
    static final TableColumn<CoolantNeed> CAPACITY =
            TableColumn.figure("System holds", Unit.LITRES, 10, CoolantNeed::capacityLitres);
    static final TableColumn<CoolantNeed> VISIT_DRAINED = TableColumn.<CoolantNeed>figure(
                    "Drained", Unit.LITRES, 9, CoolantNeed::drainedLitres)
            .summed();
    static final TableColumn<CoolantNeed> NOW =
            TableColumn.figure("Glycol now", Unit.PERCENT, 13, CoolantNeed::nowPercent);
    static final TableColumn<CoolantNeed> TARGET =
            TableColumn.figure("Target", Unit.PERCENT, 10, CoolantNeed::targetPercent);
    static final TableColumn<CoolantNeed> VISIT_WASTE = TableColumn.<CoolantNeed>figure(
                    "Old coolant to collect", Unit.LITRES, 13, CoolantNeed::wasteLitres)
            .summed();
    static final TableColumn<CoolantNeed> VISIT_CONCENTRATE = TableColumn.<CoolantNeed>figure(
                    "Concentrate", Unit.LITRES, 12, CoolantNeed::concentrateLitres)
            .summed();
    static final TableColumn<CoolantNeed> VISIT_WATER = TableColumn.<CoolantNeed>figure(
                    "Water", Unit.LITRES, 9, CoolantNeed::waterLitres)
            .summed();
    static final TableColumn<CoolantNeed> PUT_BACK = TableColumn.<CoolantNeed>figure(
                    "Put back", Unit.LITRES, 9, CoolantNeed::putBackLitres)
            .summed();
    static final TableColumn<CoolantNeed> REMARK = TableColumn.wrapped("Remark", 44, CoolantNeed::remark);

    /** By week, for a page. */
    public static final List<TableColumn<CoolantWeek>> BY_WEEK = List.of(
            WEEK,
            WEEKS_DEPOT,
            VISITS,
            DRAINED,
            CONCENTRATE,
            WATER,
            WASTE,
            CONCENTRATE_CONTAINERS,
            WATER_CONTAINERS,
            WASTE_CONTAINERS);

    /** By visit, for a page. */
    public static final List<TableColumn<CoolantNeed>> BY_VISIT = List.of(
            TRUCK,
            VISIT_WEEK,
            DEPOT,
            VISIT_DRAINED,
            VISIT_CONCENTRATE,
            VISIT_WATER,
            PUT_BACK,
            VISIT_WASTE,
            TARGET,
            REMARK);

    private CoolantColumns() {}

    private static TableColumn<CoolantWeek> litres(
            String heading, int width, java.util.function.Function<CoolantWeek, Object> value) {
        return TableColumn.<CoolantWeek>figure(heading, Unit.LITRES, width, value::apply)
                .summed();
    }
}
