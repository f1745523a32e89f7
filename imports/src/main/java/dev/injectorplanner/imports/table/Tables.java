package dev.injectorplanner.imports.table;

import dev.injectorplanner.core.check.InvalidValueException;
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
import dev.injectorplanner.core.fleet.Replacement;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.imports.cell.Heading;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The tables that can be loaded. */
public final class Tables {
    public static final Table<Depot> DEPOTS = PlaceTables.depots();
    public static final Table<CapacityOverride> CAPACITY = PlaceTables.capacity();
    public static final Table<EngineFamily> ENGINE_FAMILIES = EngineTables.engineFamilies();
    public static final Table<AccessStep> ACCESS = EngineTables.access();
    public static final Table<Truck> TRUCKS = TruckTables.trucks();
    public static final Table<DutyGroup> DUTY_GROUPS = PlaceTables.dutyGroups();
    public static final Table<FittedInjector> INJECTORS = TruckTables.injectors();
    public static final Table<Replacement> REPLACEMENTS = ReplacementTables.replacements();
    public static final Table<Reading> READINGS = TruckTables.readings();
    public static final Table<Fault> FAULTS = TruckTables.faults();
    public static final Table<CylinderTest> CYLINDER_TESTS = TruckTables.cylinderTests();
    public static final Table<Part> PARTS = PartTables.parts();
    public static final Table<JobPart> JOB_PARTS = EngineTables.jobParts();
    public static final Table<StockLine> STOCK = PartTables.stock();
    public static final Table<PurchaseLine> PURCHASE_LINES = PartTables.purchaseLines();
    public static final Table<Transfer> TRANSFERS = PartTables.transfers();
    public static final Table<AwayWindow> AWAY = TruckTables.away();
    public static final Table<IntervalTask> INTERVALS = EngineTables.intervals();
    public static final Table<Rule> RULES = EngineTables.rules();
    public static final Table<DepotShift> SHIFTS = PlaceTables.shifts();
    public static final Table<Repair> REPAIRS = TruckTables.repairs();
    public static final Table<UnitReturn> RETURNS = ReturnTables.returns();
    public static final Table<TaskDone> TASK_DONE = TruckTables.taskDone();
    public static final Table<FailureAnswer> FAILURE_ANSWERS = PartTables.failureAnswers();
    public static final Table<LogSource> LOG_SOURCES = TruckTables.logSources();

    /** All tables in the order in which they must be loaded: what others refer to comes first. */
    public static final List<Table<?>> ALL = List.of(
            DEPOTS,
            PARTS,
            ENGINE_FAMILIES,
            DUTY_GROUPS,
            TRUCKS,
            ACCESS,
            INTERVALS,
            JOB_PARTS,
            RULES,
            CAPACITY,
            INJECTORS,
            REPLACEMENTS,
            READINGS,
            FAULTS,
            CYLINDER_TESTS,
            STOCK,
            PURCHASE_LINES,
            TRANSFERS,
            AWAY,
            SHIFTS,
            REPAIRS,
            RETURNS,
            TASK_DONE,
            FAILURE_ANSWERS,
            LOG_SOURCES);

    private Tables() {}

    /** The table of a name; case, spaces, hyphens and underscores do not count. */
    public static Optional<Table<?>> find(String name) {
        String wanted = Heading.plain(name);
        return ALL.stream()
                .filter(table -> Heading.plain(table.name()).equals(wanted))
                .findFirst();
    }

    /**
     * The table of a name.
     *
     * @throws InvalidValueException if there is none, with the names that there are
     */
    public static Table<?> get(String name) {
        return find(name)
                .orElseThrow(() -> new InvalidValueException("table", name, "no such table", "name one of " + names()));
    }

    /** All names, in alphabetical order, for people. */
    public static String names() {
        return ALL.stream().map(Table::name).sorted().collect(Collectors.joining(", "));
    }
}
