package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.allocation.Shipment;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.OverdueLine;
import dev.injectorplanner.core.parts.ShelfState;
import dev.injectorplanner.core.parts.ShortAdvice;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.parts.StockWeek;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Trucks of North whose injectors are beyond their limit, and what lies or comes where. Worked by hand: an express
 * shipment 90 and two days, an ordinary order 21 days at the longest, a visit of all eight cylinders two days.
 */
class P01_StockIsSharedTest {
    private static final String SOUTH = "South";
    private static final IsoWeek W10 = IsoWeek.of(TODAY);

    private final FleetBuilder fleet = new FleetBuilder().rule(RuleKind.DISTANCE_KM, 200_000);

    private P01_StockIsSharedTest overdue(String... trucks) {
        for (String truck : trucks) {
            fleet.truck(truck).allInjectors(truck, 215_000);
        }
        return this;
    }

    private void south(double onHand) {
        Depot north = fleet.depots.get(0);
        fleet.depots.add(new Depot(
                SOUTH,
                "South yard",
                north.timeZone(),
                north.bays(),
                north.labourHoursPerDay(),
                north.workDays(),
                north.labourPerHour(),
                north.overtimePerHour(),
                north.overtimeHoursPerWeek()));
        fleet.stock.add(new StockLine(SOUTH, INJECTOR, onHand));
    }

    private Plan plan() {
        return PlanOf.fleet(fleet.build());
    }

    private static Map<PieceSource, Double> bySource(Plan plan) {
        Map<PieceSource, Double> sums = new TreeMap<>();
        plan.parts().allocation().pieces().forEach(each -> sums.merge(each.source(), each.quantity(), Double::sum));
        return sums;
    }

    /** Nine lie free at South, eight are needed: sent for 60 in two days, not bought by express for 90. */
    @Test
    void piecesThatLieFreeElsewhereAreSentAndNotBought() {
        overdue("T1");
        south(9);
        Plan plan = plan();
        assertThat(bySource(plan)).containsExactly(Map.entry(PieceSource.TRANSFER, 8.0));
        assertThat(plan.parts().transfers()).singleElement().satisfies(transfer -> {
            assertThat(transfer.from()).isEqualTo(SOUTH);
            assertThat(transfer.depot()).isEqualTo(NORTH);
            assertThat(transfer.pieces()).containsEntry(INJECTOR, 8.0);
            assertThat(transfer.readyOn()).isEqualTo(TODAY.plusDays(2));
            assertThat(transfer.cost()).isEqualTo(60);
        });
        assertThat(plan.parts().shortList()).extracting(ShortLine::advice).containsOnly(ShortAdvice.TRANSFER);
        assertThat(plan.parts().shortList()).extracting(ShortLine::fromDepot).containsOnly(SOUTH);
        assertThat(plan.parts().orders()).noneMatch(line -> line.depot().equals(NORTH) && line.forVisits() > 0);
    }

    /** The same where South is not in the plan and only says that it can spare nine. */
    @Test
    void aDepotPlannedByItselfIsSentWhatOthersCanSpare() {
        overdue("T1");
        FleetSnapshot alone = fleet.build().withSpares(List.of(new StockLine(SOUTH, INJECTOR, 9)), List.of());
        Plan plan = PlanOf.fleet(alone);
        assertThat(bySource(plan)).containsExactly(Map.entry(PieceSource.TRANSFER, 8.0));
        assertThat(plan.parts().transfers()).extracting(Shipment::from).containsExactly(SOUTH);
        assertThat(plan.parts().shelves()).extracting(ShelfState::depot).containsOnly(NORTH);
        assertThat(plan.parts().stockWeeks()).extracting(StockWeek::depot).containsOnly(NORTH);
        FleetSnapshot dear = fleet.build()
                .withSpares(
                        List.of(new StockLine(SOUTH, INJECTOR, 9)),
                        List.of(new Transfer(SOUTH, NORTH, new BigDecimal("120"), 3)));
        assertThat(bySource(PlanOf.fleet(dear))).containsExactly(Map.entry(PieceSource.EXPRESS, 8.0));
    }

    /** The table says three days and 120 for this pair: dearer than express. */
    @Test
    void aTransferDearerThanExpressIsNotProposed() {
        overdue("T1");
        south(9);
        fleet.transfers.add(new Transfer(SOUTH, NORTH, new BigDecimal("120"), 3));
        assertThat(bySource(plan())).containsExactly(Map.entry(PieceSource.EXPRESS, 8.0));
    }

    /** South's own truck needs eight of the nine: one is no whole kit, so North's come by express. */
    @Test
    void theGivingDepotKeepsWhatItNeedsFirst() {
        overdue("T1");
        south(9);
        fleet.truck("S1").allInjectors("S1", 215_000);
        Truck south = fleet.trucks.remove(1);
        fleet.trucks.add(new Truck(
                south.truck(), new Vin("W0T00000000000777"), SOUTH, V8, null, LocalDate.of(2020, 1, 10), null, null));
        Plan plan = plan();
        assertThat(plan.parts().transfers()).isEmpty();
        assertThat(plan.parts().allocation().pieces())
                .filteredOn(each -> each.truck().equals("S1"))
                .extracting(AllocatedPieces::source)
                .containsOnly(PieceSource.SHELF);
    }

    /** Eight are due on Thursday of next week: the truck waits for them, and in the end nothing is left over. */
    @Test
    void anOpenOrderIsWaitedForWhereWaitingCostsLess() {
        overdue("T1");
        fleet.rules.clear();
        fleet.purchaseLines.add(new PurchaseLine("PO-1", INJECTOR, NORTH, 8, TODAY.plusDays(10), null));
        Plan plan = plan();
        Visit visit = plan.visits().get(0);
        Map<PieceSource, Double> sources = bySource(plan);
        assertThat(sources.keySet()).doesNotContain(PieceSource.ORDINARY_ORDER);
        List<StockWeek> weeks = plan.parts().stockWeeks();
        double leftOver = weeks.get(weeks.size() - 1).end();
        assertThat(leftOver)
                .as("visit in %s by %s", visit.week(), sources)
                .isEqualTo(8 - visit.cylinders().size());
        assertThat(plan.parts().orders())
                .filteredOn(line -> line.forVisits() > 0)
                .isEmpty();
    }

    /** Where it cannot wait, the supplier sends pieces of that order sooner instead of new ones: nothing is left over. */
    @Test
    void expressTakesPiecesThatAreOnOrderAnyway() {
        overdue("T1");
        fleet.purchaseLines.add(new PurchaseLine("PO-1", INJECTOR, NORTH, 8, TODAY.plusDays(20), null));
        Plan plan = PlanOf.held(fleet.build(), new Holds(Map.of("T1", W10), Map.of(), Map.of()));
        assertThat(plan.visits()).singleElement().extracting(Visit::week).isEqualTo(W10);
        assertThat(plan.parts().allocation().pieces()).allSatisfy(each -> {
            assertThat(each.source()).isEqualTo(PieceSource.EXPRESS);
            assertThat(each.order()).isEqualTo("PO-1");
        });
        assertThat(plan.parts().orders())
                .filteredOn(line -> line.forVisits() > 0)
                .isEmpty();
        List<StockWeek> weeks = plan.parts().stockWeeks();
        assertThat(weeks.get(weeks.size() - 1).end()).isZero();
    }

    /** Eight on the shelf, two trucks of eight: one takes them, the other pays for its own. */
    @Test
    void eachPieceIsUsedOnceAndThePlanPaysForTheOther() {
        overdue("T1", "T2");
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 8));
        Plan both = plan();
        assertThat(bySource(both)).containsEntry(PieceSource.SHELF, 8.0);
        fleet.stock.set(0, new StockLine(NORTH, INJECTOR, 16));
        Plan enough = plan();
        assertThat(bySource(enough)).containsExactly(Map.entry(PieceSource.SHELF, 16.0));
        assertThat(both.cost().cost()).isGreaterThan(enough.cost().cost());
        double shipments = both.parts().allocation().cost();
        double waiting = both.cost().cost() - enough.cost().cost() - shipments;
        assertThat(waiting).isBetween(-1e-6, 90 + 1e-6);
    }

    /** The parts come on Wednesday by express, so the visit of this week starts no earlier. */
    @Test
    void noVisitStartsBeforeItsKitIsThere() {
        overdue("T1", "T2", "T3");
        Plan plan = plan();
        assertThat(plan.days())
                .allSatisfy(depot -> assertThat(depot.days().laid()).allSatisfy(laid -> {
                    LocalDate start = laid.start().toLocalDate();
                    plan.parts().allocation().pieces().stream()
                            .filter(each -> each.truck().equals(laid.truck()))
                            .forEach(each -> assertThat(start).isAfterOrEqualTo(each.readyOn()));
                }));
        assertThat(plan.visits()).hasSize(3);
    }

    /** On Friday an express shipment comes on Sunday: a pin on this week cannot be kept, and says why. */
    @Test
    void aPinWithoutPartsIsBrokenAndSaysWhy() {
        overdue("T1");
        Plan plan = PlanOf.planner()
                .plan(
                        fleet.build(),
                        Policy.standard(),
                        TODAY.plusDays(4),
                        new Holds(Map.of("T1", W10), Map.of(), Map.of()));
        assertThat(plan.visits()).singleElement().extracting(Visit::week).isEqualTo(W10.plus(1));
        assertThat(plan.cost().brokenWishes())
                .singleElement()
                .satisfies(wish -> assertThat(wish.reason()).contains("its parts cannot be there in time"));
    }

    /** A line eleven days late counts for nothing and is a question; once a new day is confirmed it counts again. */
    @Test
    void anOverdueLineIsAQuestionForTheBuyer() {
        overdue("T1");
        fleet.purchaseLines.add(new PurchaseLine("PO-1", INJECTOR, NORTH, 8, TODAY.minusDays(11), null));
        Plan plan = plan();
        assertThat(plan.parts().overdue())
                .singleElement()
                .extracting(OverdueLine::question)
                .isEqualTo("Ask Supplier One: line of 8, 11 days late");
        assertThat(bySource(plan)).doesNotContainKey(PieceSource.ORDER);
        fleet.purchaseLines.set(
                0, new PurchaseLine("PO-1", INJECTOR, NORTH, 8, TODAY.minusDays(11), null, TODAY.plusDays(1)));
        Plan confirmed = plan();
        assertThat(confirmed.parts().overdue()).isEmpty();
        assertThat(bySource(confirmed)).containsExactly(Map.entry(PieceSource.ORDER, 8.0));
    }

    /** What is on its way from another depot cannot be sent sooner by a supplier; late, its depot is asked. */
    @Test
    void aTransferOnItsWayIsNoOrderOfASupplier() {
        overdue("T1");
        fleet.purchaseLines.add(new PurchaseLine("TR-00001", INJECTOR, NORTH, 8, TODAY.plusDays(40), null));
        Plan plan = PlanOf.held(fleet.build(), new Holds(Map.of("T1", W10), Map.of(), Map.of()));
        assertThat(plan.parts().allocation().pieces())
                .allMatch(each -> each.source() == PieceSource.EXPRESS && each.order() == null);
        fleet.purchaseLines.set(0, new PurchaseLine("TR-00001", INJECTOR, NORTH, 8, TODAY.minusDays(1), null));
        assertThat(plan().parts().overdue())
                .singleElement()
                .extracting(OverdueLine::question)
                .isEqualTo("Ask the depot that sent transfer TR-00001: line of 8, 1 day late");
    }

    /** What a plan says of its shipments is in its cost. */
    @Test
    void theCostHoldsTheShipments() {
        overdue("T1");
        Plan empty = plan();
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 8));
        Plan full = plan();
        assertThat(empty.visits().get(0).week()).isEqualTo(full.visits().get(0).week());
        assertThat(empty.parts().allocation().shipments())
                .singleElement()
                .extracting(Shipment::cost)
                .isEqualTo(90.0);
        assertThat(empty.cost().cost() - full.cost().cost()).isCloseTo(90, within(1e-6));
        assertThat(empty.parts().orders().get(0)).satisfies((OrderLine line) -> {
            assertThat(line.express()).isTrue();
            assertThat(line.thereBy()).isEqualTo(TODAY.plusDays(2));
        });
    }
}
