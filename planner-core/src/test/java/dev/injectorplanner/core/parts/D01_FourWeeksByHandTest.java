package dev.injectorplanner.core.parts;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.CoolantNeeds;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.coolant.CoolantWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * One depot, four weeks, worked by hand; the same example stands in DEVELOPERS.md, "Parts and coolant by hand".
 *
 * <p>North plans four visits from Monday 2 March 2026: A cylinders 1 2, B 1 to 4, C 5 6, D 7. Injectors: 3 in stock,
 * 2 due on 10 March; usual lead time 10 days, longest 21. Clips: one a cylinder, breaks with 0.3, packs of 5, 2 on the
 * shelf, lead time 4 to 8 days. Service level 95 %.
 */
class D01_FourWeeksByHandTest {
    private static final IsoWeek W10 = new IsoWeek(2026, 10);
    private static final String CLIP = "CLIP";

    private final FleetIndex index = new FleetIndex(fleet().build());
    private final List<Visit> visits =
            List.of(visit("A", 0, 1, 2), visit("B", 1, 1, 2, 3, 4), visit("C", 2, 5, 6), visit("D", 3, 7));

    private static FleetBuilder fleet() {
        FleetBuilder fleet = new FleetBuilder().truck("A").truck("B").truck("C").truck("D");
        fleet.parts.add(new Part(
                CLIP,
                "return hose clip",
                PartKind.FITTING,
                "Supplier Two",
                new BigDecimal("0.85"),
                BigDecimal.ZERO,
                0,
                4,
                8,
                5,
                0,
                0,
                0,
                null));
        fleet.jobParts.add(new JobPart(V8, Per.CYLINDER, null, CLIP, 1, 0.3));
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 3));
        fleet.stock.add(new StockLine(NORTH, CLIP, 2));
        fleet.purchaseLines.add(new PurchaseLine("P-1", INJECTOR, NORTH, 2, TODAY.plusDays(8), null));
        return fleet;
    }

    private static Visit visit(String truck, int weeksAhead, Integer... cylinders) {
        return new Visit(
                truck,
                NORTH,
                V8,
                W10.plus(weeksAhead),
                List.of(cylinders),
                List.of("covers off", "intake off"),
                List.of(),
                false,
                5,
                cylinders[0] == 7 ? 30 : 20,
                List.of(),
                "");
    }

    private PartsPlan plan(FailureForecast forecast) {
        OrderRules rules = OrderRules.standard();
        return PartsPlan.of(index, TODAY, 4, rules, visits, forecast, PostponementCost.perWeek(rules));
    }

    private List<PartNeed> needs(String part) {
        return plan(FailureForecast.NONE).needs().stream()
                .filter(need -> need.part().equals(part))
                .toList();
    }

    /** 3 - 2 = 1; 1 - 4 = -3, so 3 missing (the two of 10 March are a day late); 2 - 2 = 0; 0 - 1, one missing. */
    @Test
    void injectors() {
        List<PartNeed> rows = needs(INJECTOR);
        assertThat(rows).extracting(PartNeed::onHandBefore).containsExactly(3.0, 1.0, 2.0, 0.0);
        assertThat(rows).extracting(PartNeed::required).containsExactly(2.0, 4.0, 2.0, 1.0);
        assertThat(rows).extracting(PartNeed::missing).containsExactly(0.0, 3.0, 0.0, 1.0);
        assertThat(rows).extracting(PartNeed::orderBy).containsExactly(null, TODAY.minusDays(14), null, TODAY);
    }

    /**
     * Clips broken among 2, 6, 8, 9 cylinders at 0.3 each, binomial: P(up to 1 of 2) = 0.91, up to 2 = 1; P(up to 3 of 6)
     * = 0.92953, up to 4 = 0.98907; P(up to 4 of 8) = 0.94203, up to 5 = 0.98871; P(up to 4 of 9) = 0.90119, up to 5 =
     * 0.97471. So 2, 4, 5, 5 suffice with 95 %: each week adds 2, 2, 1, 0.
     */
    @Test
    void clips() {
        List<PartNeed> rows = needs(CLIP);
        assertThat(rows).extracting(PartNeed::needed).containsExactly(0.6, 1.2, 0.6, 0.3);
        assertThat(rows).extracting(PartNeed::required).containsExactly(2.0, 2.0, 1.0, 0.0);
        assertThat(rows).extracting(PartNeed::missing).containsExactly(0.0, 2.0, 1.0, 0.0);
    }

    /**
     * Ordered today: 3 + 1 injectors (last days 16 February and 2 March) and the clips of week 11 (last day 1 March) with
     * a pack of 5, which also covers week 12.
     */
    @Test
    void orderList() {
        List<OrderLine> orders = plan(FailureForecast.NONE).orders();
        assertThat(orders).extracting(OrderLine::part).containsExactly(INJECTOR, CLIP);
        assertThat(orders).extracting(OrderLine::quantity).containsExactly(4.0, 5.0);
        assertThat(orders).allMatch(OrderLine::now);
        assertThat(orders.get(0).value()).isEqualByComparingTo("1920");
        assertThat(orders.get(0).deposits()).isEqualByComparingTo("480");
        assertThat(orders.get(1).value()).isEqualByComparingTo("4.25");
    }

    /**
     * B lacks 3 injectors on 9 March. Ordered today they come on 12 March usually, on 23 March at the latest, so they are
     * late for certain; moving B to week 13 costs 2 x 250 = 500, an express shipment of each of its two suppliers 180.
     */
    @Test
    void shortList() {
        List<ShortLine> lines = plan(FailureForecast.NONE).shortList();
        assertThat(lines).extracting(ShortLine::truck).containsExactly("B", "B");
        ShortLine injectors = lines.stream()
                .filter(line -> line.part().equals(INJECTOR))
                .findFirst()
                .orElseThrow();
        assertThat(injectors.missing()).isEqualTo(3);
        assertThat(injectors.chance()).isEqualTo(1);
        assertThat(injectors.usualArrival()).isEqualTo(TODAY.plusDays(10));
        assertThat(injectors.latestArrival()).isEqualTo(TODAY.plusDays(21));
        assertThat(injectors.moveTo()).isEqualTo(W10.plus(3));
        assertThat(injectors.postponementCost()).isEqualByComparingTo("500");
        assertThat(injectors.expeditePrice()).isEqualByComparingTo("180");
        assertThat(lines).allMatch(line -> line.advice() == ShortAdvice.EXPEDITE);
    }

    /** With 4 + 5 arriving on 23 and 10 March: injectors 1, -3, -3, 0; clips 0, -2, 2, 2. */
    @Test
    void theShelfWeekByWeek() {
        List<StockWeek> weeks = plan(FailureForecast.NONE).stockWeeks();
        assertThat(weeks)
                .filteredOn(week -> week.part().equals(INJECTOR))
                .extracting(StockWeek::end)
                .containsExactly(1.0, -3.0, -3.0, 0.0);
        assertThat(weeks)
                .filteredOn(week -> week.part().equals(CLIP))
                .extracting(StockWeek::end)
                .containsExactly(0.0, -2.0, 2.0, 2.0);
    }

    /**
     * Shared out, a kit due by the end of its week: A takes 2 of the 3 in stock, C the 2 of 10 March, so B has 1 and gets 3 by
     * express on 4 March for 90; D's is ordered today and there on Monday 23 March. The clips of B and C are ordered today
     * and there on Tuesday 10 March at the latest, within B's week.
     */
    @Test
    void sharedOut() {
        Allocation shared = new SharedKits(index, TODAY, OrderRules.standard(), shelf -> 0).ofWeeks(visits);
        assertThat(shared.unmet()).isEmpty();
        assertThat(shared.cost()).isEqualTo(90);
        assertThat(shared.pieces())
                .filteredOn(each -> each.part().equals(INJECTOR))
                .extracting(
                        AllocatedPieces::truck,
                        AllocatedPieces::quantity,
                        AllocatedPieces::source,
                        AllocatedPieces::readyOn)
                .containsExactly(
                        tuple("A", 2.0, PieceSource.SHELF, TODAY),
                        tuple("B", 1.0, PieceSource.SHELF, TODAY),
                        tuple("B", 3.0, PieceSource.EXPRESS, TODAY.plusDays(2)),
                        tuple("C", 2.0, PieceSource.ORDER, TODAY.plusDays(8)),
                        tuple("D", 1.0, PieceSource.ORDINARY_ORDER, TODAY.plusDays(21)));
        assertThat(shared.pieces())
                .filteredOn(each -> each.part().equals(CLIP))
                .extracting(AllocatedPieces::truck, AllocatedPieces::quantity, AllocatedPieces::source)
                .containsExactly(
                        tuple("A", 2.0, PieceSource.SHELF),
                        tuple("B", 2.0, PieceSource.ORDINARY_ORDER),
                        tuple("C", 1.0, PieceSource.ORDINARY_ORDER));
    }

    /**
     * 32 injectors, each failing within a week with 0.002, so within the 25 days at the longest with 0.0071. Expected
     * 32 x 0.0071 = 0.228; none fails with 0.9929^32 = 0.796, one at most with 0.978: one is kept. The plan leaves none free.
     */
    @Test
    void unplannedNeed() {
        FailureForecast forecast =
                FailureForecast.ofRates(Collections.nCopies(32, new FailureChance(NORTH, INJECTOR, 0.002)));
        PartsPlan plan = plan(forecast);
        UnplannedNeed need = plan.unplannedNeeds().get(0);
        assertThat(need.injectors()).isEqualTo(32);
        assertThat(need.daysLeast()).isEqualTo(14);
        assertThat(need.daysMost()).isEqualTo(25);
        assertThat(need.expected()).isBetween(32 * 0.00400, 32 * 0.00713);
        assertThat(need.target()).isEqualTo(1);
        assertThat(need.free()).isZero();
        assertThat(need.missing()).isEqualTo(1);
        // at equal chance 14, 17, 20, 22 or 25 days: none fails with 0.880, 0.856, 0.833, 0.818, 0.795
        assertThat(need.covered()).isCloseTo(0.8364, within(0.001));
        assertThat(plan.orders().get(0).quantity()).isEqualTo(5);
        assertThat(plan.orders().get(0).forReserve()).isEqualTo(1);
    }

    /** Each visit loses a twentieth of its 20 or 30 l: 0.5 l of concentrate and of water, in D's week 0.75 l; one can each. */
    @Test
    void coolant() {
        List<CoolantWeek> weeks =
                CoolantWeek.of(CoolantNeeds.of(index, visits, CoolantRules.standard()), CoolantRules.standard());
        assertThat(weeks).extracting(CoolantWeek::concentrateLitres).containsExactly(0.5, 0.5, 0.5, 0.75);
        assertThat(weeks).extracting(CoolantWeek::waterLitres).containsExactly(0.5, 0.5, 0.5, 0.75);
        assertThat(weeks).extracting(CoolantWeek::wasteLitres).containsExactly(1.0, 1.0, 1.0, 1.5);
        assertThat(weeks).extracting(CoolantWeek::concentrateContainers).containsOnly(1);
    }
}
