package dev.injectorplanner.app.store;

import dev.injectorplanner.app.store.StoredTable.ByTruck;
import dev.injectorplanner.app.store.StoredTable.ByTruckAndMoment;
import dev.injectorplanner.app.store.StoredTable.Whole;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.LogSource;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.imports.table.Tables;
import java.util.List;

/** The stored tables, listed: no class path scan. */
final class StoredTables {
    private static final String AT_DEPOT = "r.depot = :depot";
    private static final String OF_TRUCKS = "r.truck in (select t.truck from TruckRow t where t.depot = :depot)";

    static final StoredTable<Depot> DEPOTS =
            new StoredTable<>(Depot.class, DepotRow.class, DepotRow::new, Tables.DEPOTS::key, new Whole<>(), AT_DEPOT);
    static final StoredTable<Part> PARTS =
            new StoredTable<>(Part.class, PartRow.class, PartRow::new, Tables.PARTS::key, new Whole<>(), "");
    static final StoredTable<EngineFamily> ENGINE_FAMILIES = new StoredTable<>(
            EngineFamily.class,
            EngineFamilyRow.class,
            EngineFamilyRow::new,
            Tables.ENGINE_FAMILIES::key,
            new Whole<>(),
            "");
    static final StoredTable<AccessStep> ACCESS = new StoredTable<>(
            AccessStep.class, AccessStepRow.class, AccessStepRow::new, Tables.ACCESS::key, new Whole<>(), "");
    static final StoredTable<DutyGroup> DUTY_GROUPS = new StoredTable<>(
            DutyGroup.class, DutyGroupRow.class, DutyGroupRow::new, Tables.DUTY_GROUPS::key, new Whole<>(), "");
    static final StoredTable<Truck> TRUCKS =
            new StoredTable<>(Truck.class, TruckRow.class, TruckRow::new, Tables.TRUCKS::key, new Whole<>(), AT_DEPOT);
    static final StoredTable<CapacityOverride> CAPACITY = new StoredTable<>(
            CapacityOverride.class,
            CapacityOverrideRow.class,
            CapacityOverrideRow::new,
            Tables.CAPACITY::key,
            new Whole<>(),
            AT_DEPOT);
    static final StoredTable<FittedInjector> INJECTORS = new StoredTable<>(
            FittedInjector.class,
            FittedInjectorRow.class,
            FittedInjectorRow::new,
            Tables.INJECTORS::key,
            new ByTruck<>(FittedInjector::truck),
            OF_TRUCKS);
    static final StoredTable<Reading> READINGS = new StoredTable<>(
            Reading.class,
            ReadingRow.class,
            ReadingRow::new,
            Tables.READINGS::key,
            new ByTruckAndMoment<>(Reading::truck, Reading::takenAt, "takenAt"),
            OF_TRUCKS);
    static final StoredTable<Fault> FAULTS = new StoredTable<>(
            Fault.class,
            FaultRow.class,
            FaultRow::new,
            Tables.FAULTS::key,
            new ByTruckAndMoment<>(Fault::truck, Fault::seenAt, "seenAt"),
            OF_TRUCKS);
    static final StoredTable<CylinderTest> CYLINDER_TESTS = new StoredTable<>(
            CylinderTest.class,
            CylinderTestRow.class,
            CylinderTestRow::new,
            Tables.CYLINDER_TESTS::key,
            new ByTruckAndMoment<>(CylinderTest::truck, CylinderTest::testedAt, "testedAt"),
            OF_TRUCKS);
    static final StoredTable<JobPart> JOB_PARTS = new StoredTable<>(
            JobPart.class, JobPartRow.class, JobPartRow::new, Tables.JOB_PARTS::key, new Whole<>(), "");
    static final StoredTable<StockLine> STOCK = new StoredTable<>(
            StockLine.class, StockLineRow.class, StockLineRow::new, Tables.STOCK::key, new Whole<>(), AT_DEPOT);
    static final StoredTable<PurchaseLine> PURCHASE_LINES = new StoredTable<>(
            PurchaseLine.class,
            PurchaseLineRow.class,
            PurchaseLineRow::new,
            Tables.PURCHASE_LINES::key,
            new Whole<>(),
            AT_DEPOT);
    static final StoredTable<Transfer> TRANSFERS = new StoredTable<>(
            Transfer.class,
            TransferRow.class,
            TransferRow::new,
            Tables.TRANSFERS::key,
            new Whole<>(),
            "r.from = :depot and r.to = :depot"); // a depot by itself has nobody to send to
    static final StoredTable<AwayWindow> AWAY = new StoredTable<>(
            AwayWindow.class,
            AwayWindowRow.class,
            AwayWindowRow::new,
            Tables.AWAY::key,
            new ByTruck<>(AwayWindow::truck),
            OF_TRUCKS);
    static final StoredTable<IntervalTask> INTERVALS = new StoredTable<>(
            IntervalTask.class, IntervalTaskRow.class, IntervalTaskRow::new, Tables.INTERVALS::key, new Whole<>(), "");
    static final StoredTable<Rule> RULES =
            new StoredTable<>(Rule.class, RuleRow.class, RuleRow::new, Tables.RULES::key, new Whole<>(), "");

    static final StoredTable<DepotShift> SHIFTS = new StoredTable<>(
            DepotShift.class, DepotShiftRow.class, DepotShiftRow::new, Tables.SHIFTS::key, new Whole<>(), AT_DEPOT);
    static final StoredTable<Repair> REPAIRS = new StoredTable<>(
            Repair.class,
            RepairRow.class,
            RepairRow::new,
            Tables.REPAIRS::key,
            new ByTruck<>(Repair::truck),
            OF_TRUCKS);
    static final StoredTable<UnitReturn> RETURNS = new StoredTable<>(
            UnitReturn.class,
            UnitReturnRow.class,
            UnitReturnRow::new,
            Tables.RETURNS::key,
            new ByTruck<>(UnitReturn::truck),
            OF_TRUCKS);

    static final StoredTable<TaskDone> TASK_DONE = new StoredTable<>(
            TaskDone.class,
            TaskDoneRow.class,
            TaskDoneRow::new,
            Tables.TASK_DONE::key,
            new ByTruck<>(TaskDone::truck),
            OF_TRUCKS);
    static final StoredTable<FailureAnswer> FAILURE_ANSWERS = new StoredTable<>(
            FailureAnswer.class,
            FailureAnswerRow.class,
            FailureAnswerRow::new,
            Tables.FAILURE_ANSWERS::key,
            new Whole<>(),
            "");
    static final StoredTable<LogSource> LOG_SOURCES = new StoredTable<>(
            LogSource.class,
            LogSourceRow.class,
            LogSourceRow::new,
            Tables.LOG_SOURCES::key,
            new Whole<>(),
            "r.truck is null or " + OF_TRUCKS);

    static final List<StoredTable<?>> ALL = List.of(
            DEPOTS,
            PARTS,
            ENGINE_FAMILIES,
            ACCESS,
            DUTY_GROUPS,
            TRUCKS,
            CAPACITY,
            INJECTORS,
            READINGS,
            FAULTS,
            CYLINDER_TESTS,
            INTERVALS,
            JOB_PARTS,
            STOCK,
            PURCHASE_LINES,
            TRANSFERS,
            AWAY,
            RULES,
            SHIFTS,
            REPAIRS,
            RETURNS,
            TASK_DONE,
            FAILURE_ANSWERS,
            LOG_SOURCES);

    private StoredTables() {}

    /** The table of a kind of record. */
    @SuppressWarnings("unchecked") // type() says what the table holds
    static <R> StoredTable<R> of(Class<R> type) {
        return (StoredTable<R>) ALL.stream()
                .filter(table -> table.type().equals(type))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no table stores " + type.getName()));
    }
}
