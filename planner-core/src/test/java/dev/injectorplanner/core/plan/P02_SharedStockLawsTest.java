package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.StockWeek;
import dev.injectorplanner.core.parts.UnplannedNeed;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.schedule.VisitScheduler;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Random fleets of three depots with thin shelves, open orders (some overdue, some confirmed anew) and ways between depots,
 * held against a ledger that is kept here and shares nothing with the planner. The seed is in the name of each case.
 */
class P02_SharedStockLawsTest {
    private static final LocalDate TODAY = DemoFleet.TODAY;

    private record Case(long seed, FleetSnapshot fleet, Plan plan) {
        @Override
        public String toString() {
            return "seed " + seed;
        }
    }

    private static final List<Case> CASES = Stream.of(1L, 2L, 3L, 4L, 5L, 6L)
            .map(seed -> {
                FleetSnapshot fleet = fleet(seed);
                return new Case(seed, fleet, planner(seed).plan(fleet, Policy.standard(), TODAY.plusDays(seed % 5)));
            })
            .toList();

    private static Planner planner(long seed) {
        VisitScheduler scheduler =
                seed % 3 == 0 ? new EarliestFit() : new ExactScheduler(new SearchLimits(1, 2e-3, 1, seed));
        return new Planner(scheduler);
    }

    static Stream<Case> cases() {
        return CASES.stream();
    }

    private static FleetSnapshot fleet(long seed) {
        FleetSnapshot made =
                new FleetGenerator(DemoFleet.ofSize(60, seed)).generate().snapshot();
        Random random = new Random(seed);
        List<Depot> depots = new ArrayList<>();
        Depot first = made.depots().get(0);
        for (String name : List.of("East", "Mid", "West")) {
            depots.add(new Depot(
                    name,
                    name,
                    first.timeZone(),
                    2,
                    18,
                    first.workDays(),
                    first.labourPerHour(),
                    first.overtimePerHour(),
                    4));
        }
        List<Truck> trucks = new ArrayList<>();
        for (Truck truck : made.trucks()) {
            String depot = depots.get(random.nextInt(3)).depot();
            trucks.add(new Truck(
                    truck.truck(),
                    truck.vin(),
                    depot,
                    truck.family(),
                    null,
                    truck.inServiceOn(),
                    truck.outOfServiceOn(),
                    truck.warrantyUntil()));
        }
        List<StockLine> stock = new ArrayList<>();
        List<PurchaseLine> lines = new ArrayList<>();
        int order = 0;
        for (Depot depot : depots) {
            for (Part part : made.parts()) {
                if (random.nextInt(3) > 0) {
                    stock.add(new StockLine(depot.depot(), part.part(), random.nextInt(14)));
                }
                while (random.nextInt(3) == 0) {
                    LocalDate due = TODAY.plusDays(random.nextInt(40) - 8);
                    LocalDate confirmed = random.nextInt(3) == 0 ? due.plusDays(random.nextInt(20)) : null;
                    lines.add(new PurchaseLine(
                            "PO-" + ++order, part.part(), depot.depot(), 1 + random.nextInt(9), due, null, confirmed));
                }
            }
        }
        List<Transfer> transfers = List.of(
                new Transfer("East", "Mid", new BigDecimal("25"), 1),
                new Transfer("Mid", "East", new BigDecimal("25"), 1),
                new Transfer("West", "East", new BigDecimal("300"), 5));
        return new FleetSnapshot(
                        depots,
                        List.of(),
                        made.engineFamilies(),
                        made.access(),
                        List.of(),
                        trucks,
                        made.injectors(),
                        made.readings(),
                        made.faults(),
                        made.cylinderTests(),
                        made.parts(),
                        made.jobParts(),
                        stock,
                        lines,
                        made.away(),
                        made.intervals(),
                        made.rules())
                .withTransfers(transfers);
    }

    private static List<AllocatedPieces> pieces(Case one) {
        return one.plan().parts().allocation().pieces();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyPieceIsUsedOnce(Case one) {
        Map<String, Double> left = new HashMap<>();
        one.fleet().stock().forEach(line -> left.put("shelf " + line.depot() + " " + line.part(), line.onHand()));
        for (PurchaseLine line : one.fleet().purchaseLines()) {
            LocalDate day = line.confirmedOn() == null ? line.dueOn() : line.confirmedOn();
            if (!day.isBefore(one.plan().today())) {
                left.put(line.order() + " " + line.depot() + " " + line.part(), line.quantity());
            }
        }
        for (AllocatedPieces each : pieces(one)) {
            String giver = each.fromDepot() == null ? each.depot() : each.fromDepot();
            boolean fromSomewhere =
                    each.order() != null || each.source() == PieceSource.SHELF || each.source() == PieceSource.TRANSFER;
            if (fromSomewhere) {
                String place = (each.order() == null ? "shelf " : each.order() + " ") + giver + " " + each.part();
                double now = left.getOrDefault(place, 0.0) - each.quantity();
                assertThat(now).as("%s of %s", place, each).isGreaterThan(-1e-6);
                left.put(place, now);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyKitHoldsItsInjectorsAndNoVisitStartsBeforeItIsComplete(Case one) {
        Map<String, LocalDate> started = new HashMap<>();
        one.plan()
                .days()
                .forEach(depot -> depot.days()
                        .laid()
                        .forEach(laid -> started.put(
                                laid.truck() + " " + IsoWeek.of(laid.start().toLocalDate()),
                                laid.start().toLocalDate())));
        Map<String, String> injectorOf = new HashMap<>();
        one.fleet().engineFamilies().forEach(family -> injectorOf.put(family.family(), family.injectorPart()));
        for (Visit visit : one.plan().visits()) {
            if (visit.cylinders().isEmpty()) {
                continue;
            }
            List<AllocatedPieces> kit = pieces(one).stream()
                    .filter(each -> each.truck().equals(visit.truck()))
                    .toList();
            double injectors = kit.stream()
                    .filter(each -> each.part().equals(injectorOf.get(visit.family())))
                    .mapToDouble(AllocatedPieces::quantity)
                    .sum();
            assertThat(injectors)
                    .as("%s", visit.truck())
                    .isEqualTo(visit.cylinders().size());
            LocalDate start = started.getOrDefault(
                    visit.truck() + " " + visit.week(), visit.week().sunday());
            kit.forEach(each -> assertThat(each.readyOn()).as("%s", each).isBeforeOrEqualTo(start));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void noShipmentIsFasterThanItCanBe(Case one) {
        LocalDate today = one.plan().today();
        Map<String, Integer> lead = new HashMap<>();
        one.fleet().parts().forEach(part -> lead.put(part.part(), part.leadDaysMax()));
        for (AllocatedPieces each : pieces(one)) {
            int days = switch (each.source()) {
                case SHELF, ORDER -> 0;
                case EXPRESS -> 2;
                case ORDINARY_ORDER -> lead.getOrDefault(each.part(), 0);
                case TRANSFER ->
                    "West East".equals(each.fromDepot() + " " + each.depot())
                            ? 5
                            : each.fromDepot() != null
                                            && !each.fromDepot().equals("West")
                                            && !each.depot().equals("West")
                                    ? 1
                                    : 2;
            };
            assertThat(each.readyOn()).as("%s", each).isAfterOrEqualTo(today.plusDays(days));
        }
    }

    /** On hand, open and advised are what visits require and safety asks for, and no more than pack and least order force. */
    @ParameterizedTest
    @MethodSource("cases")
    void noAdviceLeavesMoreThanPacksForce(Case one) {
        Map<String, Double> have = new TreeMap<>();
        Map<String, Double> advised = new TreeMap<>();
        one.fleet().stock().forEach(line -> have.merge(line.depot() + " " + line.part(), line.onHand(), Double::sum));
        for (PurchaseLine line : one.fleet().purchaseLines()) {
            if (!line.expectedOn().isBefore(one.plan().today())) {
                have.merge(line.depot() + " " + line.part(), line.quantity(), Double::sum);
            }
        }
        for (AllocatedPieces each : pieces(one)) {
            if (each.source() == PieceSource.TRANSFER) {
                have.merge(each.fromDepot() + " " + each.part(), -each.quantity(), Double::sum);
                have.merge(each.depot() + " " + each.part(), each.quantity(), Double::sum);
            }
        }
        for (OrderLine line : one.plan().parts().orders()) {
            advised.merge(line.depot() + " " + line.part(), line.quantity(), Double::sum);
        }
        Map<String, Double> wanted = new TreeMap<>();
        for (PartNeed need : one.plan().partNeeds()) {
            wanted.merge(need.depot() + " " + need.part(), need.required(), Double::sum);
        }
        for (UnplannedNeed need : one.plan().parts().unplannedNeeds()) {
            wanted.merge(need.depot() + " " + need.part(), (double) need.target(), Double::sum);
        }
        for (OrderLine line : one.plan().parts().orders()) {
            String shelf = line.depot() + " " + line.part();
            double tooLate = one.fleet().purchaseLines().stream()
                    .filter(open -> shelf.equals(open.depot() + " " + open.part()))
                    .filter(open -> open.expectedOn().isAfter(line.thereBy()))
                    .mapToDouble(PurchaseLine::quantity)
                    .sum();
            double over =
                    have.getOrDefault(shelf, 0.0) - tooLate + advised.get(shelf) - wanted.getOrDefault(shelf, 0.0);
            assertThat(over)
                    .as("%s left over of %s", over, line)
                    .isLessThan(Math.max(line.pack(), line.minimumOrder()));
        }
    }

    /** Followed, the order list and the transfers leave no shelf below zero. */
    @ParameterizedTest
    @MethodSource("cases")
    void noShelfRunsBelowZero(Case one) {
        assertThat(one.plan().parts().stockWeeks())
                .filteredOn(week -> week.end() < -1e-6)
                .extracting(StockWeek::toString)
                .isEmpty();
    }

    @Test
    void theCasesHoldEverySource() {
        assertThat(CASES.stream().flatMap(one -> pieces(one).stream()).map(AllocatedPieces::source))
                .contains(PieceSource.values());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theSameAllocationWhateverTheOrderOfTheRows(Case one) {
        Plan again = planner(one.seed())
                .plan(
                        FleetBuilder.shuffled(one.fleet(), 99),
                        Policy.standard(),
                        one.plan().today());
        assertThat(again.parts().allocation()).isEqualTo(one.plan().parts().allocation());
        assertThat(again.cost()).isEqualTo(one.plan().cost());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theBoundIsBelowTheCost(Case one) {
        Double bound = one.plan().cost().bound();
        if (bound != null) {
            assertThat(bound).isLessThanOrEqualTo(one.plan().cost().cost() + 1e-9);
        }
    }
}
