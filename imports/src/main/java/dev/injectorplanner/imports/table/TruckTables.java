package dev.injectorplanner.imports.table;

import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultText;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.LogSource;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import java.time.Instant;
import java.util.List;

/** Tables of trucks and of what is known of each. */
final class TruckTables {
    private TruckTables() {}

    static Table<Truck> trucks() {
        return Table.named("trucks", Truck.class)
                .required("truck", CellKinds.TEXT, Truck::truck, "name used in the tables")
                .optional(
                        "vin",
                        CellKinds.VIN,
                        Truck::vin,
                        "vehicle identification number, 17 characters; empty: not known")
                .required("depot", CellKinds.TEXT, Truck::depot, "where it is looked after")
                .required("family", CellKinds.TEXT, Truck::family, "its engine family")
                .optional("duty_group", CellKinds.TEXT, Truck::dutyGroup, "duty group; empty: none")
                .required("in_service_on", CellKinds.DATE, Truck::inServiceOn, "first day of service")
                .optional(
                        "out_of_service_on",
                        CellKinds.DATE,
                        Truck::outOfServiceOn,
                        "day it left the fleet; empty: still in service")
                .optional(
                        "warranty_until",
                        CellKinds.DATE,
                        Truck::warrantyUntil,
                        "last day of the truck warranty; empty: unknown")
                .optional(
                        "records_since",
                        CellKinds.DATE,
                        Truck::recordsSince,
                        "first day from which its injector failures are on record; empty: as its depot says")
                .key(List.of("truck"), t -> List.of(t.truck()))
                .made(v -> new Truck(
                        v.get("truck"),
                        v.find("vin"),
                        v.get("depot"),
                        v.get("family"),
                        v.find("duty_group"),
                        v.get("in_service_on"),
                        v.find("out_of_service_on"),
                        v.find("warranty_until"),
                        v.find("records_since")));
    }

    static Table<FittedInjector> injectors() {
        return injectorColumns()
                .key(
                        List.of("truck", "cylinder", "fitted_on", "fitting"),
                        i -> List.of(i.truck(), i.cylinder(), i.fittedOn(), i.fitting()))
                .made(v -> new FittedInjector(
                        v.get("truck"),
                        v.get("cylinder"),
                        v.get("part"),
                        v.find("serial"),
                        v.find("calibration_code"),
                        v.get("origin"),
                        v.get("fitted_on"),
                        v.find("odometer_km"),
                        v.find("engine_hours"),
                        v.find("removed_on"),
                        v.find("removed_odometer_km"),
                        v.find("removed_engine_hours"),
                        v.find("found"),
                        v.or("fitting", 1)));
    }

    private static Table.Builder<FittedInjector> injectorColumns() {
        return fittingColumns()
                .optional("removed_on", CellKinds.DATE, FittedInjector::removedOn, "day removed; empty: still fitted")
                .measured(
                        "removed_odometer",
                        ColumnUnit.DISTANCE,
                        false,
                        FittedInjector::removedOdometerKm,
                        "at removal; empty: unknown")
                .optional(
                        "removed_engine_hours",
                        CellKinds.NUMBER,
                        FittedInjector::removedEngineHours,
                        "at removal; empty: unknown")
                .optional(
                        "found",
                        CellKinds.choice(Found.class),
                        FittedInjector::found,
                        "failed, worn, healthy or unknown, at removal")
                .optional(
                        "fitting",
                        CellKinds.WHOLE,
                        FittedInjector::fitting,
                        "order of those fitted in this cylinder that day; empty: 1, the only one");
    }

    private static Table.Builder<FittedInjector> fittingColumns() {
        return Table.named("injectors", FittedInjector.class)
                .required("truck", CellKinds.TEXT, FittedInjector::truck, "the truck")
                .required("cylinder", CellKinds.WHOLE, FittedInjector::cylinder, "as the engine maker counts")
                .required("part", CellKinds.TEXT, FittedInjector::part, "its part number")
                .optional("serial", CellKinds.TEXT, FittedInjector::serial, "the unit's serial; empty: unknown")
                .optional(
                        "calibration_code",
                        CellKinds.TEXT,
                        FittedInjector::calibrationCode,
                        "code that goes into the ECU under its cylinder; empty: unknown")
                .required(
                        "origin",
                        CellKinds.choice(Origin.class),
                        FittedInjector::origin,
                        "new or reman; unknown where nobody knows")
                .required(
                        "fitted_on",
                        CellKinds.FITTED_ON,
                        FittedInjector::fittedOn,
                        "day it was fitted; before records where nobody knows")
                .measured(
                        "odometer",
                        ColumnUnit.DISTANCE,
                        false,
                        FittedInjector::odometerKm,
                        "at fitting; empty: unknown")
                .optional("engine_hours", CellKinds.NUMBER, FittedInjector::engineHours, "at fitting; empty: unknown");
    }

    static Table<Reading> readings() {
        return Table.named("readings", Reading.class)
                .required("truck", CellKinds.TEXT, Reading::truck, "the truck")
                .required(
                        "taken_at",
                        CellKinds.INSTANT,
                        Reading::takenAt,
                        "date and time, in the depot's time or with an offset")
                .measured("odometer", ColumnUnit.DISTANCE, false, Reading::odometerKm, "odometer; empty: not read")
                .optional("engine_hours", CellKinds.NUMBER, Reading::engineHours, "engine hours; empty: not read")
                .optional(
                        "meter_replaced",
                        CellKinds.YES_NO,
                        Reading::meterReplaced,
                        "yes where the meter was replaced before this reading; empty: no")
                .key(List.of("truck", "taken_at"), r -> List.of(r.truck(), r.takenAt()))
                .made(v -> new Reading(
                        v.get("truck"),
                        v.get("taken_at"),
                        v.find("odometer_km"),
                        v.find("engine_hours"),
                        v.or("meter_replaced", false)));
    }

    static Table<Fault> faults() {
        return Table.named("faults", Fault.class)
                .required("truck", CellKinds.TEXT, Fault::truck, "the truck")
                .required(
                        "seen_at",
                        CellKinds.INSTANT,
                        Fault::seenAt,
                        "date and time, in the depot's time or with an offset")
                .required(
                        "code",
                        CellKinds.FAULT_CODE,
                        fault -> new FaultText(fault.code(), null, null),
                        "SPN 651 FMI 5, 651/5 or P0201; words such as cyl 3 contribution")
                .optional(
                        "cylinder",
                        CellKinds.WHOLE,
                        Fault::cylinder,
                        "where the code does not say it; empty: none named")
                .optional(
                        "count",
                        CellKinds.WHOLE,
                        fault -> fault.isUncounted() ? null : Integer.valueOf(fault.count()),
                        "occurrences, as the code's counter says; empty: not known, one report")
                .measured(
                        "odometer",
                        ColumnUnit.DISTANCE,
                        false,
                        Fault::odometerKm,
                        "odometer at that time; empty: unknown")
                .optional(
                        "last_seen_at",
                        CellKinds.INSTANT,
                        fault -> fault.isUncounted() ? null : fault.lastSeenAt(),
                        "end of an episode of repeated reports; count is then how often it came in it; empty: one report")
                .key(List.of("truck", "seen_at", "code", "cylinder"), f -> {
                    Integer cylinder = f.cylinder();
                    return List.of(f.truck(), f.seenAt(), f.code().text(), cylinder == null ? 0 : cylinder);
                })
                .made(TruckTables::fault);
    }

    /** Count and cylinder may stand in the text of the code; columns of their own go before it. */
    private static Fault fault(RowValues v) {
        FaultText text = v.get("code");
        Integer cylinder = v.find("cylinder");
        Integer of = cylinder == null ? text.cylinder() : cylinder;
        Integer said = v.find("count");
        Integer count = said == null ? text.count() : said;
        Double km = v.find("odometer_km");
        Instant last = v.find("last_seen_at");
        return count == null && last == null
                ? Fault.uncounted(v.get("truck"), v.get("seen_at"), text.code(), of, km)
                : new Fault(v.get("truck"), v.get("seen_at"), text.code(), of, count == null ? 1 : count, km, last);
    }

    static Table<LogSource> logSources() {
        return Table.named("log_sources", LogSource.class)
                .required("log", CellKinds.TEXT, LogSource::log, "name of the log file; * stands for any characters")
                .optional(
                        "source_address",
                        CellKinds.WHOLE,
                        LogSource::sourceAddress,
                        "ECU's address on the bus, 0 is the engine; empty: all of the log")
                .optional("truck", CellKinds.TEXT, LogSource::truck, "the truck; empty: by file name or VIN")
                .optional(
                        "spn_layout",
                        CellKinds.WHOLE,
                        LogSource::spnLayout,
                        "layout of SPNs in fault messages, 1 to 4, for ECUs made before 2006; empty: 4")
                .key(List.of("log", "source_address"), s -> {
                    Integer source = s.sourceAddress();
                    return List.of(s.log(), source == null ? -1 : source);
                })
                .made(v ->
                        new LogSource(v.get("log"), v.find("source_address"), v.find("truck"), v.find("spn_layout")));
    }

    static Table<CylinderTest> cylinderTests() {
        return Table.named("cylinder_tests", CylinderTest.class)
                .required("truck", CellKinds.TEXT, CylinderTest::truck, "the truck")
                .required(
                        "cylinder",
                        CellKinds.WHOLE,
                        CylinderTest::cylinder,
                        "cylinder number as the engine maker counts")
                .required(
                        "tested_at",
                        CellKinds.INSTANT,
                        CylinderTest::testedAt,
                        "date and time, in the depot's time or with an offset")
                .required(
                        "test",
                        CellKinds.choice(TestKind.class),
                        CylinderTest::test,
                        "balance, return_flow or contribution")
                .required("value", CellKinds.NUMBER, CylinderTest::value, "test result")
                .required(
                        "unit", CellKinds.TEXT, CylinderTest::unit, "unit of the result, such as mm3/stroke, ml/min, %")
                .optional("engine_state", CellKinds.TEXT, CylinderTest::engineState, "engine state, such as warm idle")
                .key(
                        List.of("truck", "cylinder", "tested_at", "test"),
                        t -> List.of(t.truck(), t.cylinder(), t.testedAt(), t.test()))
                .made(v -> new CylinderTest(
                        v.get("truck"),
                        v.get("cylinder"),
                        v.get("tested_at"),
                        v.get("test"),
                        v.get("value"),
                        v.get("unit"),
                        v.or("engine_state", "")));
    }

    static Table<AwayWindow> away() {
        return Table.named("away", AwayWindow.class)
                .required("truck", CellKinds.TEXT, AwayWindow::truck, "the truck that cannot be spared")
                .required("from", CellKinds.DATE, AwayWindow::from, "first day")
                .required("to", CellKinds.DATE, AwayWindow::to, "last day")
                .optional("reason", CellKinds.TEXT, AwayWindow::reason, "why")
                .key(List.of("truck", "from"), a -> List.of(a.truck(), a.from()))
                .made(v -> new AwayWindow(v.get("truck"), v.get("from"), v.get("to"), v.or("reason", "")));
    }

    static Table<TaskDone> taskDone() {
        return Table.named("task_done", TaskDone.class)
                .required("truck", CellKinds.TEXT, TaskDone::truck, "the truck")
                .required("task", CellKinds.TEXT, TaskDone::task, "the scheduled service, as in the table intervals")
                .required("done_on", CellKinds.DATE, TaskDone::doneOn, "day it was done")
                .measured(
                        "odometer", ColumnUnit.DISTANCE, false, TaskDone::odometerKm, "odometer then; empty: not read")
                .optional("engine_hours", CellKinds.NUMBER, TaskDone::engineHours, "then; empty: not read")
                .key(List.of("truck", "task", "done_on"), t -> List.of(t.truck(), t.task(), t.doneOn()))
                .made(v -> new TaskDone(
                        v.get("truck"),
                        v.get("task"),
                        v.get("done_on"),
                        v.find("odometer_km"),
                        v.find("engine_hours")));
    }

    static Table<Repair> repairs() {
        return Table.named("repairs", Repair.class)
                .required("truck", CellKinds.TEXT, Repair::truck, "the truck")
                .required("done_on", CellKinds.DATE, Repair::doneOn, "day the repair was finished")
                .measured("odometer", ColumnUnit.DISTANCE, false, Repair::odometerKm, "odometer then; empty: not read")
                .required(
                        "what",
                        CellKinds.TEXT,
                        Repair::what,
                        "what was done, or: no fault found; a safety fault is closed by its code or a part of the fuel system")
                .optional("hours", CellKinds.NUMBER, Repair::hours, "labour, hours; empty: not noted")
                .optional("remark", CellKinds.TEXT, Repair::remark, "anything else")
                .required("by", CellKinds.TEXT, Repair::by, "who did it, or stands for it")
                .key(List.of("truck", "done_on", "what"), r -> List.of(r.truck(), r.doneOn(), r.what()))
                .made(v -> new Repair(
                        v.get("truck"),
                        v.get("done_on"),
                        v.find("odometer_km"),
                        v.get("what"),
                        v.find("hours"),
                        v.or("remark", ""),
                        v.get("by")));
    }
}
