package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.replay.world.TruckWorld;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One week of one fleet: what was decided comes about as far as hours and parts go, and failures come when they come. */
final class WeekPlay {
    private static final int VISITS = 2;
    private static final int WORK_DAYS = 5;
    private static final double TEST_HOURS = 0.5;
    private static final double BALANCE_LIMIT = 4;
    private static final double FLOW_LIMIT = 60;
    private static final double EXPRESS = 150;
    private static final double EXPRESS_DAYS = 2;

    private final FleetRun run;
    private final Keeper keeper;
    private final int monday;
    private final boolean counted;
    private final @Nullable RunRecords records;
    private final Map<String, Double> free = new HashMap<>();
    private final Map<String, Double> booked = new HashMap<>();
    private final Map<Shelf, Integer> missing = new HashMap<>();

    WeekPlay(FleetRun run, Keeper keeper, int monday, boolean counted, @Nullable RunRecords records) {
        this.run = run;
        this.keeper = keeper;
        this.monday = monday;
        this.counted = counted;
        this.records = records;
    }

    void play() {
        for (Depot depot : run.world.site().depots()) {
            free.put(depot.depot(), run.workshop.plainHours(depot, monday) - run.workshop.settle(depot.depot()));
        }
        run.workshop.shelves().forEach(shelf -> shelf.arrive(monday));
        Map<Integer, WorkOrder> visits = admit(keeper.decide(run, monday));
        for (Keeper.PartOrder order : keeper.orders()) {
            Shelf shelf = run.workshop.findShelf(order.depot(), order.part());
            if (shelf != null) {
                shelf.order(run.world, monday, order.quantity());
            }
        }
        for (int truck = 0; truck < run.trucks(); truck++) {
            if (run.inService(truck, monday)) {
                happen(truck, visits.get(truck));
            }
        }
        for (Shelf shelf : run.workshop.shelves()) {
            shelf.restore(run.world, monday + 6, missing.getOrDefault(shelf, 0));
        }
        if (records != null) {
            note(records);
        }
    }

    /** Visits that find hours and parts and come about; the others have to be asked for again. */
    private Map<Integer, WorkOrder> admit(List<WorkOrder> orders) {
        Map<Integer, WorkOrder> visits = new HashMap<>();
        Map<Shelf, Integer> taken = new HashMap<>();
        for (WorkOrder order : orders) {
            TruckWorld truck = run.trucks.get(order.truck());
            boolean late = run.world.shopDraws(VISITS, monday, order.truck()).chance(lateShare());
            if (late || !truck.inServiceOn(monday + WORK_DAYS - 1) || visits.containsKey(order.truck())) {
                continue;
            }
            Depot depot = run.depotOf(order.truck());
            double plain = Math.max(0, free.getOrDefault(depot.depot(), 0.0));
            double hours = hours(truck, order);
            double used = booked.getOrDefault(depot.depot(), 0.0);
            Shelf shelf = run.workshop.shelfOf(truck);
            int pieces = Integer.bitCount(order.cylinders());
            int there = shelf.onHand() - taken.getOrDefault(shelf, 0);
            if (pieces > there) {
                missing.merge(shelf, pieces - Math.max(0, there) + taken.getOrDefault(shelf, 0), Integer::sum);
            } else if (used + hours <= plain + depot.overtimeHoursPerWeek()) {
                booked.put(depot.depot(), used + hours);
                overtime(truck, Math.max(0, used + hours - plain) - Math.max(0, used - plain));
                taken.merge(shelf, pieces, Integer::sum);
                visits.put(order.truck(), order);
            }
        }
        return visits;
    }

    private double lateShare() {
        return run.world.scenario().shop().lateShare();
    }

    private void overtime(TruckWorld truck, double hours) {
        ledger(truck).add(CostKind.OVERTIME, hours * run.workshop.costsOf(truck).overtimeExtra);
    }

    private double hours(TruckWorld truck, WorkOrder order) {
        return run.workshop.costsOf(truck).hours(order.cylinders()) + (order.test() ? TEST_HOURS : 0);
    }

    private void happen(int truck, @Nullable WorkOrder order) {
        WorkOrder visit = order;
        int visitDay = monday + run.world.shopDraws(VISITS + 1, monday, truck).whole(0, WORK_DAYS - 1);
        for (int day = monday; day < monday + 7 && run.inService(truck, day); day++) {
            int failed = failedOn(truck, day);
            if (failed != 0) {
                int along = visit == null ? 0 : visit.cylinders();
                int done = failed | along | keeper.whileOpen(run, truck, day, failed);
                if (visit != null && visit.test()) {
                    test(truck, day, false);
                }
                repair(truck, day, failed, done);
                visit = null;
            } else if (visit != null && day == visitDay) {
                visit(truck, day, visit);
                visit = null;
            } else if (visit == null && nothingFails(truck)) {
                return;
            }
        }
    }

    private boolean nothingFails(int truck) {
        for (Position position : run.positions[truck]) {
            if (position.failDay < monday + 7) {
                return false;
            }
        }
        return true;
    }

    private int failedOn(int truck, int day) {
        int failed = 0;
        for (Position position : run.positions[truck]) {
            failed |= position.failDay <= day ? 1 << position.cylinder : 0;
        }
        return failed;
    }

    private void visit(int number, int day, WorkOrder visit) {
        TruckWorld truck = run.trucks.get(number);
        WorkCosts costs = run.workshop.costsOf(truck);
        double before = ledger(truck).cost();
        if (visit.test()) {
            test(number, day, visit.cylinders() == 0);
        }
        if (visit.cylinders() != 0) {
            Ledger ledger = ledger(truck);
            ledger.plannedVisits++;
            work(number, day, visit.cylinders(), 0);
            ledger.add(CostKind.BAY, WorkCosts.BAY);
            ledger.add(CostKind.DOWNTIME, costs.downtime(costs.hours(visit.cylinders())));
            run.workshop.shelfOf(truck).take(Integer.bitCount(visit.cylinders()));
        }
        tell(truck, day, visit.cylinders(), 0, visit.test(), before);
    }

    private void tell(TruckWorld truck, int day, int cylinders, int failed, boolean test, double costBefore) {
        if (counted && run.journal() != Journal.NONE) {
            WorkCosts costs = run.workshop.costsOf(truck);
            run.journal()
                    .work(new Journal.Work(
                            truck.truck(),
                            day,
                            costs.pieces(cylinders),
                            Integer.bitCount(cylinders),
                            Integer.bitCount(failed),
                            (cylinders == 0 ? 0 : costs.hours(cylinders)) + (test ? TEST_HOURS : 0),
                            costs.litres(cylinders),
                            ledger(truck).cost() - costBefore));
        }
    }

    private void repair(int number, int day, int failed, int done) {
        TruckWorld truck = run.trucks.get(number);
        WorkCosts costs = run.workshop.costsOf(truck);
        Ledger ledger = ledger(truck);
        double before = ledger.cost();
        for (Position position : run.positions[number]) {
            if ((failed & 1 << position.cylinder) != 0) {
                ledger.roadFailures++;
                ledger.add(CostKind.ROAD_FAILURES, costs.roadFailure * position.unit.roadFactor());
            }
        }
        work(number, day, done, failed);
        ledger.add(CostKind.BAY, WorkCosts.BAY);
        double hours = costs.hours(done);
        ledger.add(CostKind.DOWNTIME, costs.downtime(hours));
        run.workshop.owe(truck.truck().depot(), hours);
        int express = run.workshop.shelfOf(truck).take(Integer.bitCount(done));
        if (express > 0) {
            ledger.add(CostKind.EXPRESS, EXPRESS * express);
            ledger.add(CostKind.DOWNTIME, costs.downtimeDays(EXPRESS_DAYS));
        }
        tell(truck, day, done, failed, false, before);
    }

    private void work(int number, int day, int mask, int failed) {
        TruckWorld truck = run.trucks.get(number);
        WorkCosts costs = run.workshop.costsOf(truck);
        Ledger ledger = ledger(truck);
        double hours = costs.hours(mask);
        double litres = costs.litres(mask);
        ledger.hours += hours;
        ledger.coolantLitres += litres;
        ledger.replaced += Integer.bitCount(mask);
        ledger.add(CostKind.PARTS, costs.parts(mask));
        ledger.add(CostKind.LABOUR, hours * costs.labourPerHour);
        ledger.add(CostKind.COOLANT, costs.coolant(litres));
        for (Position position : run.positions[number]) {
            int bit = 1 << position.cylinder;
            if ((mask & bit) != 0) {
                replace(number, position, day, (failed & bit) != 0);
            }
        }
    }

    private void replace(int number, Position position, int day, boolean failed) {
        TruckWorld truck = run.trucks.get(number);
        if (!failed) {
            Ledger ledger = ledger(truck);
            double left = position.unit.lifeKm() - truck.wearSince(position.fittedKm, day);
            ledger.thrownAwayKm += truck.kmOfWear(Math.max(0, left));
            ledger.caught += position.hasDefect(day) ? 1 : 0;
        }
        if (records != null && run.noted(number)) {
            records.of(number).faults(position, monday, day);
            records.of(number).removed(position, day, failed);
        }
        position.renew(truck, day);
        if (records != null && run.noted(number)) {
            records.of(number).fitted(position);
        }
    }

    /** All injectors in the engine are tested; what comes out the same day belongs to the old ones. */
    private void test(int number, int day, boolean alone) {
        TruckWorld truck = run.trucks.get(number);
        WorkCosts costs = run.workshop.costsOf(truck);
        Ledger ledger = ledger(truck);
        ledger.tests++;
        ledger.testsAlone += alone ? 1 : 0;
        ledger.hours += TEST_HOURS;
        ledger.add(
                CostKind.TESTS,
                TEST_HOURS * costs.labourPerHour
                        + (alone ? WorkCosts.BAY + costs.downtime(TEST_HOURS) : costs.downtimeDays(TEST_HOURS / 8)));
        run.testedKm[number] = truck.kmOn(day);
        for (Position position : run.positions[number]) {
            double age = truck.wearSince(position.fittedKm, day);
            double balance = truck.balance(position.cylinder, position.unit, age, day);
            double flow = truck.flow(position.cylinder, position.unit, age, day);
            boolean overBalance = Math.abs(balance) > BALANCE_LIMIT;
            boolean overFlow = flow > FLOW_LIMIT;
            position.testsOver = overBalance || overFlow ? position.testsOver + 1 : 0;
            position.bothOver = overBalance && overFlow;
            if (records != null && run.noted(number)) {
                records.of(number).tested(position, day, balance, flow);
            }
        }
    }

    private Ledger ledger(TruckWorld truck) {
        return counted ? run.ledgers.get(truck.family()) : new Ledger();
    }

    /** What the week's end leaves in the tables: faults of what is in, and a reading. */
    private void note(RunRecords kept) {
        for (int truck = 0; truck < run.trucks(); truck++) {
            int last = Math.min(monday + 6, run.trucks.get(truck).soldDay() - 1);
            if (run.noted(truck) && last >= monday) {
                for (Position position : run.positions[truck]) {
                    kept.of(truck).faults(position, monday, last);
                }
                kept.of(truck).read(monday);
            }
        }
    }
}
