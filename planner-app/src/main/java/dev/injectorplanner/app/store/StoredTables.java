package dev.injectorplanner.app.store;

import dev.injectorplanner.app.store.StoredTable.ByTruck;
import dev.injectorplanner.app.store.StoredTable.ByTruckAndMoment;
import dev.injectorplanner.app.store.StoredTable.Whole;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.imports.Tables;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/** The stored tables, listed: no class path scan. */
final class StoredTables {
    private static final String AT_DEPOT = "r.depot = :depot";
    private static final String OF_TRUCKS = "r.truck in (select t.truck from TruckRow t where t.depot = :depot)";

    static final StoredTable<Depot> DEPOTS =
            small(Depot.class, DepotRow.class, DepotRow::new, Tables.DEPOTS::key, AT_DEPOT);
    static final StoredTable<Part> PARTS = small(Part.class, PartRow.class, PartRow::new, Tables.PARTS::key, "");
    static final StoredTable<EngineFamily> ENGINE_FAMILIES =
            small(EngineFamily.class, EngineFamilyRow.class, EngineFamilyRow::new, Tables.ENGINE_FAMILIES::key, "");
    static final StoredTable<AccessStep> ACCESS =
            small(AccessStep.class, AccessStepRow.class, AccessStepRow::new, Tables.ACCESS::key, r.step()), "");
    static final StoredTable<DutyGroup> DUTY_GROUPS =
            small(DutyGroup.class, DutyGroupRow.class, DutyGroupRow::new, Tables.DUTY_GROUPS::key, "");
    static final StoredTable<Truck> TRUCKS =
            small(Truck.class, TruckRow.class, TruckRow::new, Tables.TRUCKS::key, AT_DEPOT);
    static final StoredTable<CapacityOverride> CAPACITY = small(
            CapacityOverride.class,
            CapacityOverrideRow.class,
            CapacityOverrideRow::new,
            Tables.CAPACITY::key, r.date()),
            AT_DEPOT);
    static final StoredTable<FittedInjector> INJECTORS = new StoredTable<>(
            FittedInjector.class,
            FittedInjectorRow.class,
            FittedInjectorRow::new,
            Tables.INJECTORS::key, r.cylinder(), r.fittedOn()),
            new ByTruck<>(FittedInjector::truck),
            OF_TRUCKS);
    static final StoredTable<Reading> READINGS = new StoredTable<>(
            Reading.class,
            ReadingRow.class,
            ReadingRow::new,
            Tables.READINGS::key, r.takenAt()),
            new ByTruckAndMoment<>(Reading::truck, Reading::takenAt, "takenAt"),
            OF_TRUCKS);
    static final StoredTable<Fault> FAULTS = new StoredTable<>(
            Fault.class,
            FaultRow.class,
            FaultRow::new,
            Tables.FAULTS::key, r.seenAt(), r.code(), r.cylinder()),
            new ByTruckAndMoment<>(Fault::truck, Fault::seenAt, "seenAt"),
            OF_TRUCKS);
    static final StoredTable<CylinderTest> CYLINDER_TESTS = new StoredTable<>(
            CylinderTest.class,
            CylinderTestRow.class,
            CylinderTestRow::new,
            Tables.CYLINDER_TESTS::key, r.cylinder(), r.testedAt(), r.test()),
            new ByTruckAndMoment<>(CylinderTest::truck, CylinderTest::testedAt, "testedAt"),
            OF_TRUCKS);
    static final StoredTable<JobPart> JOB_PARTS = small(
            JobPart.class, JobPartRow.class, JobPartRow::new, Tables.JOB_PARTS::key, r.per(), r.step(), r.part()), "");
    static final StoredTable<StockLine> STOCK =
            small(StockLine.class, StockLineRow.class, StockLineRow::new, Tables.STOCK::key, r.part()), AT_DEPOT);
    static final StoredTable<PurchaseLine> PURCHASE_LINES = small(
            PurchaseLine.class,
            PurchaseLineRow.class,
            PurchaseLineRow::new,
            Tables.PURCHASE_LINES::key, r.part(), r.depot()),
            AT_DEPOT);
    static final StoredTable<AwayWindow> AWAY = new StoredTable<>(
            AwayWindow.class,
            AwayWindowRow.class,
            AwayWindowRow::new,
            Tables.AWAY::key, r.from()),
            new ByTruck<>(AwayWindow::truck),
            OF_TRUCKS);
    static final StoredTable<IntervalTask> INTERVALS = small(
            IntervalTask.class, IntervalTaskRow.class, IntervalTaskRow::new, Tables.INTERVALS::key, r.task()), "");
    static final StoredTable<Rule> RULES =
            small(Rule.class, RuleRow.class, RuleRow::new, Tables.RULES::key, r.rule()), "");

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
            JOB_PARTS,
            STOCK,
            PURCHASE_LINES,
            AWAY,
            INTERVALS,
            RULES);

    private StoredTables() {}

    private static <R> StoredTable<R> small(
            Class<R> type,
            Class<? extends Row<R>> entity,
            Supplier<? extends Row<R>> blank,
            Function<R, List<Object>> key,
            String scope) {
        return new StoredTable<>(type, entity, blank, key, new Whole<>(), scope);
    }

    /** The table of a kind of record. */
    @SuppressWarnings("unchecked") // type() says what the table holds
    static <R> StoredTable<R> of(Class<R> type) {
        return (StoredTable<R>) ALL.stream()
                .filter(table -> table.type().equals(type))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no table stores " + type.getName()));
    }
}
