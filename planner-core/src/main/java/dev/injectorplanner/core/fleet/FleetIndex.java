package dev.injectorplanner.core.fleet;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A snapshot with its rows at hand by name: made once for a plan, read by all of its parts. */
public final class FleetIndex {
    private final FleetSnapshot fleet;
    private final Map<String, Depot> depots;
    private final Map<String, EngineFamily> families;
    private final Map<String, Part> parts;
    private final Map<String, List<AccessStep>> access;
    private final Map<String, List<JobPart>> jobParts;
    private final Map<String, List<IntervalTask>> intervals;
    private final Map<String, List<FittedInjector>> injectors;
    private final Map<String, List<Reading>> readings;
    private final Map<String, List<Fault>> faults;
    private final Map<String, List<CylinderTest>> tests;
    private final Map<String, List<AwayWindow>> away;
    private final Map<String, List<DepotShift>> shifts;
    private final Map<String, List<Repair>> repairs;
    private final Map<String, List<UnitReturn>> returns;
    private final Map<String, List<TaskDone>> tasksDone;
    private final Map<String, LocalDate> recordsSince = new HashMap<>();

    public FleetIndex(FleetSnapshot fleet) {
        this.fleet = fleet;
        depots = byName(fleet.depots(), Depot::depot);
        families = byName(fleet.engineFamilies(), EngineFamily::family);
        parts = byName(fleet.parts(), Part::part);
        access = runs(fleet.access(), AccessStep::family);
        jobParts = runs(fleet.jobParts(), JobPart::family);
        intervals = runs(fleet.intervals(), IntervalTask::family);
        injectors = runs(fleet.injectors(), FittedInjector::truck);
        readings = runs(fleet.readings(), Reading::truck);
        faults = runs(fleet.faults(), Fault::truck);
        tests = runs(fleet.cylinderTests(), CylinderTest::truck);
        away = runs(fleet.away(), AwayWindow::truck);
        shifts = runs(fleet.shifts(), DepotShift::depot);
        repairs = runs(fleet.repairs(), Repair::truck);
        returns = runs(fleet.returns(), UnitReturn::truck);
        tasksDone = runs(fleet.tasksDone(), TaskDone::truck);
        for (Truck truck : fleet.trucks()) {
            LocalDate since = truck.recordsSince();
            LocalDate named = since != null ? since : depot(truck.depot()).recordsSince();
            if (named != null) {
                recordsSince.put(truck.truck(), named);
            }
        }
    }

    private static <R> Map<String, R> byName(List<R> rows, Function<R, String> name) {
        Map<String, R> byName = new LinkedHashMap<>();
        rows.forEach(row -> byName.put(name.apply(row), row));
        return byName;
    }

    /** Rows that stand in the order of the name: each run of one name becomes a view of the list. */
    private static <R> Map<String, List<R>> runs(List<R> rows, Function<R, String> name) {
        Map<String, List<R>> runs = new LinkedHashMap<>();
        int start = 0;
        for (int i = 1; i <= rows.size(); i++) {
            if (i == rows.size() || !name.apply(rows.get(i)).equals(name.apply(rows.get(start)))) {
                runs.put(name.apply(rows.get(start)), rows.subList(start, i));
                start = i;
            }
        }
        return runs;
    }

    /** Day from which failures of a truck's injectors are on record, as the truck or its depot names it; null where neither does. */
    public @Nullable LocalDate recordsSince(String truck) {
        return recordsSince.get(truck);
    }

    /** Scheduled services done on a truck, by service and day. */
    public List<TaskDone> tasksDoneOf(String truck) {
        return tasksDone.getOrDefault(truck, List.of());
    }

    public FleetSnapshot fleet() {
        return fleet;
    }

    public Depot depot(String name) {
        return known("depot", name, depots);
    }

    public EngineFamily family(String name) {
        return known("engine family", name, families);
    }

    public Optional<Part> findPart(String name) {
        return Optional.ofNullable(parts.get(name));
    }

    private static <R> R known(String what, String name, Map<String, R> rows) {
        R row = rows.get(name);
        if (row == null) {
            throw new IllegalArgumentException("no " + what + " \"" + name + "\", the names are " + rows.keySet());
        }
        return row;
    }

    /** Access steps of a family in order of taking off. */
    public List<AccessStep> accessOf(String family) {
        return access.getOrDefault(family, List.of());
    }

    public List<JobPart> jobPartsOf(String family) {
        return jobParts.getOrDefault(family, List.of());
    }

    public List<IntervalTask> intervalsOf(String family) {
        return intervals.getOrDefault(family, List.of());
    }

    /** Fitted and removed injectors of a truck by cylinder and day of fitting. */
    public List<FittedInjector> injectorsOf(String truck) {
        return injectors.getOrDefault(truck, List.of());
    }

    /** Readings of a truck, oldest first. */
    public List<Reading> readingsOf(String truck) {
        return readings.getOrDefault(truck, List.of());
    }

    /** Faults of a truck, oldest first. */
    public List<Fault> faultsOf(String truck) {
        return faults.getOrDefault(truck, List.of());
    }

    /** Tests of a truck by cylinder, oldest first. */
    public List<CylinderTest> testsOf(String truck) {
        return tests.getOrDefault(truck, List.of());
    }

    public List<AwayWindow> awayOf(String truck) {
        return away.getOrDefault(truck, List.of());
    }

    /** Shifts of a depot by weekday and start; empty where it works the planner's usual one. */
    public List<DepotShift> shiftsOf(String depot) {
        return shifts.getOrDefault(depot, List.of());
    }

    /** Recorded repairs of a truck, oldest first. */
    public List<Repair> repairsOf(String truck) {
        return repairs.getOrDefault(truck, List.of());
    }

    /** Whether the core or the claim of a unit was sent. */
    public boolean isReturned(UnitReturn.What what, FittedInjector unit) {
        return findReturn(what, unit).isPresent();
    }

    /** How the core or the claim of a unit was sent; empty where it was not. */
    public Optional<UnitReturn> findReturn(UnitReturn.What what, FittedInjector unit) {
        return returns.getOrDefault(unit.truck(), List.of()).stream()
                .filter(each -> each.isOf(what, unit.truck(), unit.cylinder(), unit.fittedOn(), unit.fitting()))
                .findFirst();
    }
}
