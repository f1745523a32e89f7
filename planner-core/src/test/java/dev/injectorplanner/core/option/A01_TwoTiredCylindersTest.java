package dev.injectorplanner.core.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Worked by hand. A V8 with three access steps: covers (1 h, all), left pipes (2 h, cylinders 1 3 5 7), rear mounts (3 h,
 * cylinders 7 8, drains 60 % of 50 l = 30 l); 0.5 h a cylinder. An hour costs 70, a litre 2, the bay 40, a day standing
 * 400 at 8 h a day, so 50 an hour. A shared access share of 100 lies inside every planned cost.
 *
 * <p>Cylinders 2 and 7 are tired: leaving them until their best later moment costs 500 and 900. The others save 150 by
 * waiting. Gain = D(week) - D later - share. Week 0 has D = 0 for all; until week 1 cylinder 2 costs 20, cylinder 7 45,
 * the others save 5.
 *
 * <pre>
 * week 0, set   gains            shared access                    hours  standing   cost
 * {2}           -600             1 x 70 + 40 = 110         1.5     75        -415
 * {7}          -1000             6 x 70 + 60 + 40 = 520    6.5    325        -155
 * {2,7}        -1600             520                       7.0    350        -730   less than both apart (-570)
 * {2,7,8}      -1600 + 50        520                       7.5    375        -655   8 is open anyway, yet young
 * {2,4}         -600 + 50        110                       2.0    100        -340
 * all          -1600 + 6 x 50    520                      10.0    500        -280
 * week 1, {2,7} -580 - 955       520                       7.0    350        -665   waiting a week costs 65
 * </pre>
 */
class A01_TwoTiredCylindersTest {
    private static final Rates RATES = new Rates(70, 2, 40, 400, 8);
    private final CylinderSets sets = new CylinderSets(Engines.v8(), Engines.threeSteps());
    private final OptionPricer pricer = new OptionPricer(sets, RATES, prices(), List.of(), 2);

    static List<CylinderPrice> prices() {
        List<CylinderPrice> prices = new ArrayList<>();
        for (int cylinder : IntStream.rangeClosed(1, 8).toArray()) {
            double untilNext = cylinder == 2 ? 20 : cylinder == 7 ? 45 : -5;
            double later = cylinder == 2 ? 500 : cylinder == 7 ? 900 : -150;
            prices.add(new CylinderPrice(cylinder, new double[] {0, untilNext}, later, 100, new double[2]));
        }
        return prices;
    }

    @Test
    void every_option_costs_what_the_table_says() {
        assertThat(cost(0, 2)).isCloseTo(-415, within(1e-9));
        assertThat(cost(0, 7)).isCloseTo(-155, within(1e-9));
        assertThat(cost(0, 2, 7)).isCloseTo(-730, within(1e-9));
        assertThat(cost(0, 2, 7, 8)).isCloseTo(-655, within(1e-9));
        assertThat(cost(0, 2, 4)).isCloseTo(-340, within(1e-9));
        assertThat(cost(0, 1, 2, 3, 4, 5, 6, 7, 8)).isCloseTo(-280, within(1e-9));
        assertThat(cost(1, 2, 7)).isCloseTo(-665, within(1e-9));
    }

    @Test
    void both_tired_ones_are_done_together_and_at_once() {
        PricedVisit best = pricer.worthwhile(1).stream()
                .min((a, b) -> Double.compare(a.cost(), b.cost()))
                .orElseThrow();
        assertThat(best.week()).isZero();
        assertThat(best.cylinders()).containsExactly(2, 7);
        assertThat(best.sharedCost()).isEqualTo(520);
        assertThat(best.labourHours()).isEqualTo(7);
        assertThat(sets.steps(best.set())).containsExactly("covers", "left pipes", "rear mounts");
    }

    @Test
    void the_next_best_kept_takes_fewer_hours() {
        List<PricedVisit> kept =
                pricer.worthwhile(5).stream().filter(visit -> visit.week() == 0).toList();
        assertThat(kept).extracting(PricedVisit::cylinders).containsExactly(List.of(2, 7), List.of(2));
    }

    @Test
    void an_open_engine_asks_only_for_what_is_opened_in_addition() {
        // Cylinder 7 has failed: covers, left pipes and rear mounts are off anyway. Cylinder 2 then costs no shared
        // access:
        // gain -600, half an hour of standing 25: -575. The right bank is 2 4 6 8: -600 + 3 x 50 + 4 x 25 = -350.
        // All: -600 + 6 x 50 + 7 x 25 = -125. That one alone: 0.
        UnplannedVisit visit = new UnplannedVisit(Engines.v8(), Engines.threeSteps(), RATES, prices());
        List<UnplannedVisit.Choice> choices = visit.choices(List.of(7), List.of());
        assertThat(choices.get(0).cylinders()).containsExactly(2, 7);
        assertThat(choices.get(0).cost()).isCloseTo(-575, within(1e-9));
        assertThat(choices)
                .filteredOn(choice -> choice.name().equals("all"))
                .singleElement()
                .satisfies(all -> assertThat(all.cost()).isCloseTo(-125, within(1e-9)));
        // The bank of the failed one is the left: 1 3 5 besides 7, each 50 + 25.
        assertThat(choices)
                .filteredOn(choice -> choice.name().equals("the left bank"))
                .singleElement()
                .satisfies(bank -> assertThat(bank.cost()).isCloseTo(225, within(1e-9)));
        assertThat(choices)
                .filteredOn(choice -> choice.name().equals("that one"))
                .singleElement()
                .satisfies(alone -> assertThat(alone.cost()).isZero());
    }

    @Test
    void steps_that_another_repair_opened_cost_nothing() {
        // The covers are off for another repair: cylinder 2 is -600 + 25 = -575; 7 needs pipes and mounts, 5 h: 350,
        // 30 l: 60, 5.5 h of standing: 275, so -1000 + 685 = -315; both: -890.
        UnplannedVisit visit = new UnplannedVisit(Engines.v8(), Engines.threeSteps(), RATES, prices());
        UnplannedVisit.Choice best = visit.choices(List.of(), List.of("covers")).get(0);
        assertThat(best.cylinders()).containsExactly(2, 7);
        assertThat(best.cost()).isCloseTo(-890, within(1e-9));
    }

    private double cost(int week, Integer... cylinders) {
        return pricer.price(week, CylinderSets.maskOf(List.of(cylinders))).cost();
    }
}
