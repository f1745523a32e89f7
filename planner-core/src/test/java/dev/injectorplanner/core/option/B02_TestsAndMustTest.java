package dev.injectorplanner.core.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The V8 of {@link A01_TwoTiredCylindersTest} with work beside its cylinders, worked by hand. An hour of it costs 70 of
 * labour and 50 of standing, a visit of its own 40 for the bay.
 */
class B02_TestsAndMustTest {
    private static final Rates RATES = new Rates(70, 2, 40, 400, 8);
    private static final double[] NO_WEIGHTS = {0, 0};

    /** Saves 300, of which cylinder 2 stands for 120 and cylinder 7 for 150: what is replaced need not be tested. */
    private static final RideAlongTask TEST = new RideAlongTask(
            RideAlongTask.INSPECTION,
            1,
            new double[] {-300, -100},
            NO_WEIGHTS,
            Map.of(2, new double[] {120, 40}, 7, new double[] {150, 50}),
            true,
            false);

    /** Costs 100 of its own, 5,000 of it a weight that is met by doing it. */
    private static final RideAlongTask MUST = new RideAlongTask(
            "diagnosis", 2, new double[] {100, 100}, new double[] {-5_000, -3_000}, Map.of(), true, true);

    private final CylinderSets sets = new CylinderSets(Engines.v8(), Engines.threeSteps());

    private OptionPricer pricer(RideAlongTask... tasks) {
        return new OptionPricer(sets, RATES, A01_TwoTiredCylindersTest.prices(), List.of(tasks), 2);
    }

    /**
     * <pre>
     * alone      -300 + 70 + 50 + 40                 = -140
     * with {2}   -300 + 120 + 120 = -60, -415 - 60   = -475
     * with {2,7} -300 + 270 + 120 = +90: stays away, = -730
     * </pre>
     */
    @Test
    void a_test_is_worth_less_beside_the_cylinders_that_it_would_have_told_of() {
        List<PricedVisit> first = pricer(TEST).worthwhile(5).stream()
                .filter(visit -> visit.week() == 0)
                .toList();
        assertThat(first).extracting(PricedVisit::cylinders).containsExactly(List.of(2, 7), List.of(2), List.of());
        assertThat(first).extracting(PricedVisit::rideAlongs).containsExactly(List.of(), List.of(TEST), List.of(TEST));
        assertThat(first.get(0).cost()).isCloseTo(-730, within(1e-9));
        assertThat(first.get(1).cost()).isCloseTo(-475, within(1e-9));
        assertThat(first.get(1).labourHours()).isCloseTo(2.5, within(1e-9));
        assertThat(first.get(2).cost()).isCloseTo(-140, within(1e-9));
    }

    /** The week after it saves 100 less 120 of work: no visit is made of it, and none of the first week's is left out. */
    @Test
    void a_test_that_does_not_pay_makes_no_visit() {
        assertThat(pricer(TEST).worthwhile(5))
                .filteredOn(visit -> visit.week() == 1 && visit.set() == 0)
                .isEmpty();
        assertThat(pricer(TEST).price(1, 0).cost()).as("nothing at all").isZero();
    }

    /** 100 + 2 x 70 of labour + 2 x 50 of standing = 340 beside cylinders; 40 more for the bay where it comes alone. */
    @Test
    void work_that_must_be_done_is_in_every_visit_and_makes_one_though_it_saves_nothing() {
        List<PricedVisit> first = pricer(MUST).worthwhile(5).stream()
                .filter(visit -> visit.week() == 0)
                .toList();
        assertThat(first).allSatisfy(visit -> assertThat(visit.rideAlongs()).contains(MUST));
        assertThat(first).extracting(PricedVisit::cylinders).containsExactly(List.of(2, 7), List.of(2), List.of());
        assertThat(first.get(0).cost()).isCloseTo(-730 + 340, within(1e-9));
        assertThat(first.get(2).cost()).isCloseTo(380, within(1e-9));
        assertThat(first.get(2).weights()).isEqualTo(-5_000);
        RideAlongTask belt = new RideAlongTask("belt", 1, new double[] {-400, -400}, false);
        assertThat(pricer(MUST, belt).worthwhile(1))
                .filteredOn(visit -> visit.week() == 0 && visit.rideAlongs().contains(belt))
                .singleElement()
                .satisfies(visit -> {
                    assertThat(visit.rideAlongs()).containsExactly(MUST, belt);
                    assertThat(visit.cost()).as("380 and -400 + 70 + 50").isCloseTo(100, within(1e-9));
                });
    }

    /** Being past a limit until next week costs 200: doing it now saves that, and the visit says that it is a weight. */
    @Test
    void lateness_is_in_the_cost_and_told_apart_as_a_weight() {
        CylinderPrice late = new CylinderPrice(2, new double[] {0, 20}, 500, 100, new double[] {-200, -50});
        OptionPricer pricer = new OptionPricer(sets, RATES, List.of(late), List.of(), 2);
        PricedVisit now = pricer.price(0, CylinderSets.maskOf(List.of(2)));
        assertThat(now.cost()).isCloseTo(-415 - 200, within(1e-9));
        assertThat(now.weights()).isEqualTo(-200);
        assertThat(pricer.price(1, now.set()).weights()).isEqualTo(-50);
    }

    @Test
    void the_least_of_all_weeks_is_found_and_nothing_where_no_cylinder_has_a_price() {
        List<CylinderPrice> later = new ArrayList<>();
        later.add(new CylinderPrice(2, new double[] {0, -30}, 500, 100, new double[2]));
        OptionPricer pricer = new OptionPricer(sets, RATES, later, List.of(), 2);
        assertThat(pricer.leastOf()).hasValueSatisfying(best -> {
            assertThat(best.week()).isEqualTo(1);
            assertThat(best.cost()).isCloseTo(-445, within(1e-9));
        });
        assertThat(pricer.weeks()).isEqualTo(2);
        assertThat(later.get(0).weeks()).isEqualTo(2);
        assertThat(pricer.pricedCylinders()).containsExactly(2);
        assertThat(new OptionPricer(sets, RATES, List.of(), List.of(), 2).leastOf())
                .isEmpty();
    }

    /** 6 h of access, 30 l, the bay: 420 + 60 + 40 = 520, an eighth of it 65. */
    @Test
    void a_cylinder_bears_its_share_of_the_full_sets_access() {
        assertThat(sets.fullSetShare(RATES)).isCloseTo(65, within(1e-9));
        assertThat(sets.accessHours(sets.count() - 1)).isEqualTo(6);
        assertThat(sets.accessHours(CylinderSets.maskOf(List.of(2)))).isEqualTo(1);
        assertThat(sets.sharedCost(0, RATES)).isZero();
    }

    @Test
    void the_advice_knows_a_set_from_a_closed_engine() {
        UnplannedVisit visit =
                new UnplannedVisit(Engines.v8(), Engines.threeSteps(), RATES, A01_TwoTiredCylindersTest.prices());
        assertThat(visit.labourHours(List.of(2, 7))).isEqualTo(7);
        assertThat(visit.drainedLitres(List.of(2, 7))).isEqualTo(30);
        assertThat(visit.choices(List.of(), List.of()))
                .as("nothing failed: both banks and all are looked at")
                .extracting(UnplannedVisit.Choice::name)
                .contains("none", "the left bank", "the right bank", "all", "the best set");
    }
}
