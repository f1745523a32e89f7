package dev.injectorplanner.core.parts;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
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
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class D02_OrderAdviceTest {
    private static final IsoWeek W10 = new IsoWeek(2026, 10);

    private final FleetBuilder fleet = new FleetBuilder().truck("A").truck("B");
    private OrderRules rules = OrderRules.standard();

    private static Part part(String number, String supplier, int lead, int leadMax, int pack, int least) {
        return new Part(
                number,
                number,
                PartKind.SEAL,
                supplier,
                new BigDecimal("10"),
                BigDecimal.ZERO,
                0,
                lead,
                leadMax,
                pack,
                least,
                0,
                0,
                null);
    }

    private static Visit visit(String truck, int weeksAhead, Integer... cylinders) {
        return new Visit(
                truck,
                NORTH,
                V8,
                W10.plus(weeksAhead),
                List.of(cylinders),
                List.of(),
                List.of(),
                false,
                5,
                0,
                List.of(),
                "");
    }

    private PartsPlan plan(Visit... visits) {
        return PartsPlan.of(
                new FleetIndex(fleet.build()),
                TODAY,
                26,
                rules,
                List.of(visits),
                FailureForecast.NONE,
                PostponementCost.perWeek(rules));
    }

    private void seal(int pack, int least) {
        fleet.parts.add(part("SEAL", "Supplier One", 3, 7, pack, least));
        fleet.jobParts.add(new JobPart(V8, Per.CYLINDER, null, "SEAL", 1, 1));
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 100));
    }

    /** Two missing: a pack of 4; the two left over serve the next two, so nothing more is ordered. */
    @Test
    void packsAndWhatTheyLeaveOver() {
        seal(4, 0);
        List<OrderLine> orders = plan(visit("A", 4, 1, 2), visit("B", 8, 1, 2)).orders();
        assertThat(orders)
                .singleElement()
                .satisfies(line -> assertThat(line.quantity()).isEqualTo(4));
    }

    @Test
    void theLeastOrderInWholePacks() {
        seal(4, 10);
        assertThat(plan(visit("A", 4, 1)).orders()).singleElement().satisfies(line -> {
            assertThat(line.quantity()).isEqualTo(12);
            assertThat(line.forVisits()).isEqualTo(1);
            assertThat(line.late()).isFalse();
        });
    }

    /** Week 14 begins on 30 March; 7 days before is 23 March, far off: ordered later, on its last day. */
    @Test
    void whatCanWaitWaits() {
        seal(1, 0);
        assertThat(plan(visit("A", 4, 1)).orders()).singleElement().satisfies(line -> {
            assertThat(line.now()).isFalse();
            assertThat(line.placeOn()).isEqualTo(LocalDate.of(2026, 3, 23));
            assertThat(line.thereBy()).isEqualTo(LocalDate.of(2026, 3, 30));
        });
    }

    /** The injector (21 days) is to be ordered on 9 March, the pipe (17 days) on 13 March: both go out on 9 March. */
    @Test
    void linesOfOneSupplierGoOutTogether() {
        fleet.parts.add(part("PIPE", "Supplier One", 3, 17, 1, 0));
        fleet.parts.add(part("HOSE", "Supplier Two", 3, 17, 1, 0));
        fleet.jobParts.add(new JobPart(V8, Per.VISIT, null, "PIPE", 1, 1));
        fleet.jobParts.add(new JobPart(V8, Per.VISIT, null, "HOSE", 1, 1));
        List<OrderLine> orders = plan(visit("A", 4, 1)).orders();
        assertThat(orders).extracting(OrderLine::part).containsExactly(INJECTOR, "PIPE", "HOSE");
        assertThat(orders)
                .extracting(OrderLine::placeOn)
                .containsExactly(LocalDate.of(2026, 3, 9), LocalDate.of(2026, 3, 9), LocalDate.of(2026, 3, 13));
    }

    @Test
    void aPartThatIsNotInTheTableIsOrderedToday() {
        fleet.families.set(0, FleetBuilder.v8());
        fleet.parts.clear();
        fleet.parts.add(FleetBuilder.part("OTHER", 0, 0));
        assertThat(plan(visit("A", 8, 1)).orders()).singleElement().satisfies(line -> {
            assertThat(line.supplier()).isEqualTo("not in the table of parts");
            assertThat(line.now()).isTrue();
        });
    }

    @Test
    void expeditedOnlyWhereThatIsCheaperThanMoving() {
        PartsPlan cheap = plan(visit("A", 1, 1));
        assertThat(cheap.shortList()).extracting(ShortLine::advice).containsExactly(ShortAdvice.EXPEDITE);
        rules = rules.withExpeditePrice(new BigDecimal("900"));
        PartsPlan dear = plan(visit("A", 1, 1));
        assertThat(dear.shortList()).extracting(ShortLine::advice).containsExactly(ShortAdvice.MOVE);
        assertThat(dear.shortList()).extracting(ShortLine::moveTo).containsExactly(W10.plus(3));
    }

    /** 14 days ahead with a lead time of 10 to 16 days: late on 2 of 7. */
    @Test
    void aSupplierWhoIsLikelyToMakeItIsTrusted() {
        rules = rules.withExpeditePrice(new BigDecimal("900"));
        fleet.parts.set(0, part(INJECTOR, "Supplier One", 10, 16, 1, 0));
        ShortLine line = plan(visit("A", 2, 1)).shortList().get(0);
        assertThat(line.advice()).isEqualTo(ShortAdvice.ORDER_TODAY);
        // two sevenths of one week's 250
        assertThat(line.waitingCost()).isEqualByComparingTo("71.43");
    }

    /** One pipe at 0.1 is kept for 95 %; it breaks in one visit of ten: 0.1 x 250 is less than 90. */
    @Test
    void aVisitGoesAheadWhereOnlyABreakablePieceIsMissing() {
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 100));
        fleet.parts.add(part("PIPE", "Supplier One", 5, 6, 1, 0));
        fleet.jobParts.add(new JobPart(V8, Per.VISIT, null, "PIPE", 1, 0.1));
        ShortLine line = plan(visit("A", 0, 1)).shortList().get(0);
        assertThat(line.advice()).isEqualTo(ShortAdvice.GO_AHEAD);
        assertThat(line.chance()).isCloseTo(0.1, within(1e-12));
        assertThat(line.waitingCost()).isEqualByComparingTo("25");
    }

    /** The most pressing visit of a week takes first: 2 in stock, A and B want 2 each, equally pressing: B goes short. */
    @Test
    void theVisitThatSuffersIsNamed() {
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 2));
        PartsPlan plan = plan(visit("B", 1, 1, 2), visit("A", 1, 1, 2));
        assertThat(plan.shortList()).extracting(ShortLine::truck).containsExactly("B");
        assertThat(plan.shortList()).extracting(ShortLine::missing).containsExactly(2.0);
    }

    /** Today is Wednesday 4 March: a line due today serves the visits of this week, whose Monday has passed. */
    @Test
    void aWeekThatHasBegunCountsFromToday() {
        LocalDate wednesday = TODAY.plusDays(2);
        fleet.purchaseLines.add(new PurchaseLine("P", INJECTOR, NORTH, 1, wednesday, null));
        PartNeeds needs = new PartNeeds(new FleetIndex(fleet.build()), wednesday, rules);
        PartNeed need = needs.of(List.of(visit("A", 0, 1))).get(0);
        assertThat(need.missing()).isZero();
        assertThat(need.arriving()).isEqualTo(1);
    }

    /** Two in stock, one more due on 10 March; the fourth is ordered today and takes 21 days. */
    @Test
    void theSchedulerLearnsWhenAKitIsThere() {
        fleet.stock.add(new StockLine(NORTH, INJECTOR, 2));
        fleet.purchaseLines.add(new PurchaseLine("P", INJECTOR, NORTH, 1, TODAY.plusDays(8), null));
        PartArrivals arrivals = new PartArrivals(new FleetIndex(fleet.build()), TODAY, rules);
        assertThat(arrivals.readyOn(visit("A", 0, 1, 2))).isEqualTo(TODAY);
        assertThat(arrivals.readyOn(visit("A", 0, 1, 2, 3))).isEqualTo(TODAY.plusDays(8));
        assertThat(arrivals.readyOn(visit("A", 0, 1, 2, 3, 4))).isEqualTo(TODAY.plusDays(21));
    }

    @Test
    void rulesRefuseNonsense() {
        for (double level : new double[] {0, 1, 1.5, Double.NaN}) {
            assertThatThrownBy(() -> rules.withServiceLevel(level))
                    .isInstanceOf(InvalidValueException.class)
                    .hasMessageContaining("service_level");
        }
        assertThatThrownBy(() -> rules.withExpeditePrice(new BigDecimal("-1")))
                .isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> new FailureChance(NORTH, INJECTOR, 1)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> new FailureChance(NORTH, INJECTOR, Double.NaN))
                .isInstanceOf(InvalidValueException.class);
    }
}
