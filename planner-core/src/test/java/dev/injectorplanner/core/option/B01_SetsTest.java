package dev.injectorplanner.core.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.access.AccessModel;
import dev.injectorplanner.core.fleet.AccessStep;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** All sets at once come to what one set at a time comes to; and the best of a week is the best of a plain search. */
class B01_SetsTest {
    private static final long SEED = 41;

    @Test
    void every_set_is_the_union_of_its_access_steps() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int round = 0; round < 60; round++) {
            int cylinders = 1 + random.nextInt(10);
            List<AccessStep> steps = Engines.randomSteps(random, cylinders);
            CylinderSets sets = new CylinderSets(Engines.inline(cylinders), steps);
            AccessModel access = new AccessModel(Engines.inline(cylinders), steps);
            for (int set = 1; set < sets.count(); set++) {
                List<Integer> list = CylinderSets.cylindersOf(set);
                assertThat(CylinderSets.maskOf(list)).isEqualTo(set);
                assertThat(sets.labourHours(set)).isCloseTo(access.labourHours(list), within(1e-9));
                assertThat(sets.drainedLitres(set)).isCloseTo(access.drainedLitres(list), within(1e-9));
            }
        }
    }

    @Test
    void the_best_set_is_found_whatever_the_number_of_cylinders() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        Rates rates = new Rates(65, 2.5, 50, 420, 8);
        for (int cylinders : new int[] {1, 4, 6, 8, 10, 12}) {
            List<AccessStep> steps = Engines.randomSteps(random, cylinders);
            CylinderSets sets = new CylinderSets(Engines.inline(cylinders), steps);
            List<CylinderPrice> prices = new ArrayList<>();
            for (int cylinder = 1; cylinder <= cylinders; cylinder++) {
                double later = random.nextInt(1_200) - 300;
                prices.add(new CylinderPrice(
                        cylinder, new double[] {0, random.nextInt(60) - 10}, later, 80, new double[2]));
            }
            OptionPricer pricer = new OptionPricer(sets, rates, prices, List.of(), 2);
            for (int week = 0; week < 2; week++) {
                double least = Double.POSITIVE_INFINITY;
                for (int set = 1; set < sets.count(); set++) {
                    least = Math.min(least, pricer.price(week, set).cost());
                }
                assertThat(pricer.best(week).cost()).isCloseTo(least, within(1e-9));
            }
        }
    }

    @Test
    void riders_join_where_that_is_cheaper_and_stay_away_where_not() {
        CylinderSets sets = new CylinderSets(Engines.v8(), Engines.threeSteps());
        Rates rates = new Rates(70, 2, 40, 400, 8);
        RideAlongTask pays =
                new RideAlongTask("filter", 0.5, new double[] {-100, -100}, true); // 35 labour, 25 standing: -40
        RideAlongTask tooEarly =
                new RideAlongTask("valves", 2, new double[] {-200, -200}, true); // 140 labour, 100 standing: +40
        RideAlongTask alone = new RideAlongTask("belt", 1, new double[] {-400, -400}, false);
        OptionPricer pricer =
                new OptionPricer(sets, rates, A01_TwoTiredCylindersTest.prices(), List.of(pays, tooEarly, alone), 2);
        PricedVisit best = pricer.best(0);
        assertThat(best.rideAlongs()).containsExactly(pays);
        assertThat(best.cost()).isCloseTo(-730 - 40, within(1e-9));
        // by itself: 40 bay, 70 labour, 50 standing, -400
        assertThat(pricer.worthwhile(1))
                .filteredOn(visit -> visit.week() == 0 && visit.rideAlongs().equals(List.of(alone)))
                .singleElement()
                .satisfies(visit -> assertThat(visit.cost()).isCloseTo(-240, within(1e-9)));
    }
}
