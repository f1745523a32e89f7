package dev.injectorplanner.core.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Whether the rows of a snapshot fit together. Every table is walked once in its order; names are looked up only where
 * they change from one row to the next, so that millions of readings cost no more than a walk.
 *
 * <p>Part numbers of injectors, fitted or of a family, need not be in the table of parts: history holds numbers that are
 * bought no more.
 */
final class FleetCheck {
    private static final int LISTED = 10;
    private static final int NAMES_SHOWN = 12;

    private final FleetSnapshot fleet;
    private final List<String> problems = new ArrayList<>();
    private final Map<String, Integer> cylindersOfTruck = new HashMap<>();
    private int count;

    private FleetCheck(FleetSnapshot fleet) {
        this.fleet = fleet;
    }

    /** @throws InvalidFleetException where rows do not fit together */
    static void check(FleetSnapshot fleet) {
        FleetCheck check = new FleetCheck(fleet);
        check.duplicates();
        check.siteTables();
        check.truckTables();
        check.cylinders();
        check.overlaps();
        if (check.count > 0) {
            throw new InvalidFleetException(check.problems, check.count);
        }
    }

    private void add(String problem) {
        count++;
        if (problems.size() < LISTED) {
            problems.add(problem);
        }
    }

    private void duplicates() {
        twice("depots", fleet.depots(), FleetOrder.DEPOTS);
        twice("capacity", fleet.capacity(), FleetOrder.CAPACITY);
        twice("engine_families", fleet.engineFamilies(), FleetOrder.ENGINE_FAMILIES);
        twice("access", fleet.access(), FleetOrder.ACCESS);
        twice("duty_groups", fleet.dutyGroups(), FleetOrder.DUTY_GROUPS);
        twice("trucks", fleet.trucks(), FleetOrder.TRUCKS);
        twice("readings", fleet.readings(), FleetOrder.READINGS);
        twice("faults", fleet.faults(), FleetOrder.FAULTS);
        twice("cylinder_tests", fleet.cylinderTests(), FleetOrder.CYLINDER_TESTS);
        twice("parts", fleet.parts(), FleetOrder.PARTS);
        twice("job_parts", fleet.jobParts(), FleetOrder.JOB_PARTS);
        twice("stock", fleet.stock(), FleetOrder.STOCK);
        twice("purchase_lines", fleet.purchaseLines(), FleetOrder.PURCHASE_LINES);
        twice("away", fleet.away(), FleetOrder.AWAY);
        twice("intervals", fleet.intervals(), FleetOrder.INTERVALS);
        twice("rules", fleet.rules(), FleetOrder.RULES);
        twice("transfers", fleet.transfers(), FleetOrder.TRANSFERS);
        twice("shifts", fleet.shifts(), FleetOrder.SHIFTS);
        twice("repairs", fleet.repairs(), FleetOrder.REPAIRS);
        twice("returns", fleet.returns(), FleetOrder.RETURNS);
        twice("task_done", fleet.tasksDone(), FleetOrder.TASKS_DONE);
        twice("failure_answers", fleet.failureAnswers(), FleetOrder.FAILURE_ANSWERS);
    }

    private <R> void twice(String table, List<R> rows, Comparator<R> key) {
        for (int i = 1; i < rows.size(); i++) {
            if (key.compare(rows.get(i - 1), rows.get(i)) == 0) {
                add(table + ": duplicate key, " + rows.get(i - 1) + " and " + rows.get(i)
                        + ". Fix: remove one of them.");
            }
        }
    }

    private void siteTables() {
        Set<String> depots = names(fleet.depots(), Depot::depot);
        Set<String> families = names(fleet.engineFamilies(), EngineFamily::family);
        Set<String> groups = names(fleet.dutyGroups(), DutyGroup::dutyGroup);
        Set<String> parts = names(fleet.parts(), Part::part);
        refer("capacity", "depot", fleet.capacity(), CapacityOverride::depot, depots);
        refer("shifts", "depot", fleet.shifts(), DepotShift::depot, depots);
        refer("access", "family", fleet.access(), AccessStep::family, families);
        refer("trucks", "depot", fleet.trucks(), Truck::depot, depots);
        refer("trucks", "family", fleet.trucks(), Truck::family, families);
        refer("trucks", "duty_group", fleet.trucks(), Truck::dutyGroup, groups);
        refer("job_parts", "family", fleet.jobParts(), JobPart::family, families);
        refer("job_parts", "part", fleet.jobParts(), JobPart::part, parts);
        refer("stock", "depot", fleet.stock(), StockLine::depot, depots);
        refer("stock", "part", fleet.stock(), StockLine::part, parts);
        refer("purchase_lines", "depot", fleet.purchaseLines(), PurchaseLine::depot, depots);
        refer("purchase_lines", "part", fleet.purchaseLines(), PurchaseLine::part, parts);
        Set<String> giving = new HashSet<>(depots);
        fleet.spares().forEach(line -> giving.add(line.depot()));
        refer("spares", "part", fleet.spares(), StockLine::part, parts);
        refer("transfers", "from", fleet.transfers(), Transfer::from, giving);
        refer("transfers", "to", fleet.transfers(), Transfer::to, depots);
        refer("intervals", "family", fleet.intervals(), IntervalTask::family, families);
        refer("rules", "family", fleet.rules(), Rule::family, families);
        Set<String> steps = names(fleet.access(), step -> step.family() + ": " + step.step());
        refer(
                "job_parts",
                "step",
                fleet.jobParts(),
                job -> job.step() == null ? null : job.family() + ": " + job.step(),
                steps);
        Set<String> tasks = names(fleet.intervals(), task -> task.family() + ": " + task.task());
        refer(
                "job_parts",
                "task",
                fleet.jobParts(),
                job -> job.task() == null ? null : job.family() + ": " + job.task(),
                tasks);
    }

    private void truckTables() {
        Set<String> trucks = names(fleet.trucks(), Truck::truck);
        refer("injectors", "truck", fleet.injectors(), FittedInjector::truck, trucks);
        refer("readings", "truck", fleet.readings(), Reading::truck, trucks);
        refer("faults", "truck", fleet.faults(), Fault::truck, trucks);
        refer("cylinder_tests", "truck", fleet.cylinderTests(), CylinderTest::truck, trucks);
        refer("away", "truck", fleet.away(), AwayWindow::truck, trucks);
        refer("repairs", "truck", fleet.repairs(), Repair::truck, trucks);
        refer("returns", "truck", fleet.returns(), UnitReturn::truck, trucks);
        refer("task_done", "truck", fleet.tasksDone(), TaskDone::truck, trucks);
    }

    private static <R> Set<String> names(List<R> rows, Function<R, String> name) {
        Set<String> names = new HashSet<>();
        rows.forEach(row -> names.add(name.apply(row)));
        return names;
    }

    private <R> void refer(
            String table, String column, List<R> rows, Function<R, @Nullable String> name, Set<String> known) {
        String last = null;
        for (R row : rows) {
            String named = name.apply(row);
            if (named != null && !named.equals(last) && !known.contains(named)) {
                add(table + ": " + column + " \"" + named + "\" is not known. Known: " + shown(known)
                        + ". Fix: load it first, or correct the name.");
            }
            last = named;
        }
    }

    private static String shown(Set<String> known) {
        List<String> names = List.copyOf(new TreeSet<>(known));
        if (names.isEmpty()) {
            return "none yet";
        }
        String first = String.join(", ", names.subList(0, Math.min(NAMES_SHOWN, names.size())));
        return names.size() <= NAMES_SHOWN ? first : first + " and " + (names.size() - NAMES_SHOWN) + " more";
    }

    private void cylinders() {
        Map<String, Integer> ofFamily = new HashMap<>();
        fleet.engineFamilies().forEach(family -> ofFamily.put(family.family(), family.cylinders()));
        for (Truck truck : fleet.trucks()) {
            Integer cylinders = ofFamily.get(truck.family());
            if (cylinders != null) {
                cylindersOfTruck.put(truck.truck(), cylinders);
            }
        }
        for (AccessStep step : fleet.access()) {
            int most = ofFamily.getOrDefault(step.family(), EngineFamily.MOST_CYLINDERS);
            for (int cylinder : step.cylinders()) {
                within("access", "family " + step.family() + ", step " + step.step(), cylinder, most);
            }
        }
        fleet.injectors().forEach(row -> ofTruck("injectors", row.truck(), row.cylinder()));
        fleet.faults().forEach(row -> ofTruck("faults", row.truck(), row.cylinder()));
        fleet.cylinderTests().forEach(row -> ofTruck("cylinder_tests", row.truck(), row.cylinder()));
    }

    private void ofTruck(String table, String truck, @Nullable Integer cylinder) {
        if (cylinder != null) {
            int most = cylindersOfTruck.getOrDefault(truck, EngineFamily.MOST_CYLINDERS);
            within(table, "truck " + truck, cylinder, most);
        }
    }

    private void within(String table, String whose, int cylinder, int most) {
        if (cylinder > most) {
            add(table + ": " + whose + " names cylinder " + cylinder + ", but its engine has " + most
                    + ". Fix: correct the cylinder, or the family.");
        }
    }

    /** Rows of one cylinder stand in the order of fitting, so neighbours tell. */
    private void overlaps() {
        for (int i = 1; i < fleet.injectors().size(); i++) {
            FittedInjector before = fleet.injectors().get(i - 1);
            FittedInjector after = fleet.injectors().get(i);
            if (before.overlaps(after)) {
                add("injectors: truck " + after.truck() + ", cylinder " + after.cylinder() + ": one was fitted on "
                        + after.fittedOn() + " while that of " + before.fittedWords() + " was still fitted. Fix: enter "
                        + "removed_on for the earlier one, or correct a date.");
            }
        }
    }
}
