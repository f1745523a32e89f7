package dev.injectorplanner.imports.table;

import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.imports.cell.CellKinds;
import java.util.List;

/** Tables of places and of the trucks that must stay on the road. */
final class PlaceTables {
    private PlaceTables() {}

    static Table<Depot> depots() {
        return Table.named("depots", Depot.class)
                .required("depot", CellKinds.TEXT, Depot::depot, "name used in the tables")
                .required("name", CellKinds.TEXT, Depot::name, "display name")
                .required("time_zone", CellKinds.ZONE, Depot::timeZone, "time zone, such as America/Chicago")
                .required("bays", CellKinds.WHOLE, Depot::bays, "trucks that can be worked on at once")
                .required(
                        "labour_hours_per_day",
                        CellKinds.NUMBER,
                        Depot::labourHoursPerDay,
                        "technicians' hours for planned work on a working day")
                .required("work_days", CellKinds.WORK_DAYS, Depot::workDays, "working days, such as Mon-Fri")
                .required("labour_per_hour", CellKinds.MONEY, Depot::labourPerHour, "cost of an hour of labour")
                .required("overtime_per_hour", CellKinds.MONEY, Depot::overtimePerHour, "full cost of an overtime hour")
                .optional(
                        "overtime_hours_per_week",
                        CellKinds.NUMBER,
                        Depot::overtimeHoursPerWeek,
                        "maximum overtime per week, hours; empty: none")
                .optional(
                        "records_since",
                        CellKinds.DATE,
                        Depot::recordsSince,
                        "first day from which injector failures are on record; empty: each truck's first reading")
                .key(List.of("depot"), d -> List.of(d.depot()))
                .made(v -> new Depot(
                        v.get("depot"),
                        v.get("name"),
                        v.get("time_zone"),
                        v.get("bays"),
                        v.get("labour_hours_per_day"),
                        v.get("work_days"),
                        v.get("labour_per_hour"),
                        v.get("overtime_per_hour"),
                        v.or("overtime_hours_per_week", 0.0),
                        v.find("records_since")));
    }

    static Table<CapacityOverride> capacity() {
        return Table.named("capacity", CapacityOverride.class)
                .required("depot", CellKinds.TEXT, CapacityOverride::depot, "the depot")
                .required("date", CellKinds.DATE, CapacityOverride::date, "day with different capacity")
                .required(
                        "labour_hours",
                        CellKinds.NUMBER,
                        CapacityOverride::labourHours,
                        "hours for planned work that day, 0 when closed")
                .required("bays", CellKinds.WHOLE, CapacityOverride::bays, "bays that day, 0 when closed")
                .key(List.of("depot", "date"), c -> List.of(c.depot(), c.date()))
                .made(v -> new CapacityOverride(v.get("depot"), v.get("date"), v.get("labour_hours"), v.get("bays")));
    }

    static Table<DepotShift> shifts() {
        return Table.named("shifts", DepotShift.class)
                .required("depot", CellKinds.TEXT, DepotShift::depot, "the depot")
                .required("weekday", CellKinds.WEEKDAY, DepotShift::weekday, "day of the week, such as Mon")
                .required("start", CellKinds.TIME, DepotShift::start, "start of the shift, such as 07:00")
                .required("end", CellKinds.TIME, DepotShift::end, "end of the shift, on the same day")
                .optional("break_start", CellKinds.TIME, DepotShift::breakStart, "start of the break; empty: none")
                .optional("break_end", CellKinds.TIME, DepotShift::breakEnd, "end of the break; empty: none")
                .key(List.of("depot", "weekday", "start"), s -> List.of(s.depot(), s.weekday(), s.start()))
                .made(v -> new DepotShift(
                        v.get("depot"),
                        v.get("weekday"),
                        v.get("start"),
                        v.get("end"),
                        v.find("break_start"),
                        v.find("break_end")));
    }

    static Table<DutyGroup> dutyGroups() {
        return Table.named("duty_groups", DutyGroup.class)
                .required(
                        "duty_group", CellKinds.TEXT, DutyGroup::dutyGroup, "trucks that can stand in for one another")
                .required(
                        "minimum_on_road",
                        CellKinds.WHOLE,
                        DutyGroup::minimumOnRoad,
                        "trucks that must stay on the road")
                .required(
                        "downtime_per_day",
                        CellKinds.MONEY,
                        DutyGroup::downtimePerDay,
                        "cost per day of one of its trucks off the road")
                .key(List.of("duty_group"), g -> List.of(g.dutyGroup()))
                .made(v -> new DutyGroup(v.get("duty_group"), v.get("minimum_on_road"), v.get("downtime_per_day")));
    }
}
