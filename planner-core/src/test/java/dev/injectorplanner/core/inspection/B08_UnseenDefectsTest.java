package dev.injectorplanner.core.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.life.WeibullLife;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class B08_UnseenDefectsTest {
    private static final double RATE = 1 / 200_000.0;
    private static final double MEAN = 10_000;

    private static List<TestedInjector> eight(DefectRate rate, Double... tests) {
        return Collections.nCopies(8, new TestedInjector(rate, List.of(tests)));
    }

    /** Constant rate k each, exponential delay m, perfect tests: 1 - exp(-8 k [s - m (1 - exp(-s / m))]). */
    @Test
    void constantRateInClosedForm() {
        UnseenDefects unseen = new UnseenDefects(new DelayTimeModel(Delay.exponential(MEAN), 1));
        List<TestedInjector> truck = eight(DefectRate.constant(RATE), 90_000.0);
        for (double since : new double[] {0, 500, 8_000, 60_000}) {
            double expected = -Math.expm1(-8 * RATE * (since + MEAN * Math.expm1(-since / MEAN)));
            assertThat(unseen.failureChance(truck, since)).isCloseTo(expected, within(1e-10));
        }
        double distance = unseen.findDistanceToLimit(truck, 0.03, 400_000).orElseThrow();
        assertThat(unseen.failureChance(truck, distance)).isCloseTo(0.03, withinPercentage(1e-3));
        assertThat(unseen.findDistanceToLimit(truck, 0.03, 0.9 * distance)).isEmpty();
        for (double limit : new double[] {1e-12, 1e-6, 0.5, 0.999}) {
            double due = unseen.findDistanceToLimit(truck, limit, 1e7).orElseThrow();
            assertThat(unseen.failureChance(truck, due)).isCloseTo(limit, withinPercentage(0.02));
        }
    }

    /**
     * A test of sensitivity p at age a, constant rate k, exponential delay m: those there at the test are k m (1 -
     * exp(-a / m)), each missed with 1 - p and failing within s with 1 - exp(-s / m).
     */
    @Test
    void missedDefectsAddTheirPart() {
        double p = 0.7;
        UnseenDefects unseen = new UnseenDefects(new DelayTimeModel(Delay.exponential(MEAN), p));
        double since = 6_000;
        double fresh = since + MEAN * Math.expm1(-since / MEAN);
        double missed = (1 - p) * MEAN * -Math.expm1(-30_000 / MEAN) * -Math.expm1(-since / MEAN);
        assertThat(unseen.failureChance(eight(DefectRate.constant(RATE), 30_000.0), since))
                .isCloseTo(-Math.expm1(-8 * RATE * (fresh + missed)), within(1e-9));
        // a second test straight after the first leaves (1 - p)^2
        assertThat(unseen.failureChance(eight(DefectRate.constant(RATE), 30_000.0, 30_000.0), since))
                .isCloseTo(-Math.expm1(-8 * RATE * (fresh + (1 - p) * missed)), within(1e-9));
    }

    @Test
    void olderWornAndFaultyTrucksAreDueSooner() {
        DelayTimeModel model = new DelayTimeModel(Delay.weibull(1.5, 12_000), 0.9);
        UnseenDefects unseen = new UnseenDefects(model);
        WeibullLife life = new WeibullLife(2.6, 310_000);
        double last = Double.POSITIVE_INFINITY;
        for (double age : new double[] {0, 60_000, 150_000, 300_000}) {
            for (double multiplier : new double[] {1, 3}) {
                DefectRate rate = DefectRate.ofLife(life, multiplier, model.delay());
                double due =
                        unseen.findDistanceToLimit(eight(rate, age), 0.02, 1e6).orElseThrow();
                if (multiplier > 1) {
                    assertThat(due).isLessThan(last);
                }
                last = due;
            }
        }
        double none = new UnseenDefects(new DelayTimeModel(Delay.endless(), 1))
                .failureChance(eight(DefectRate.ofLife(life, 1, Delay.endless()), 100.0), 1e5);
        assertThat(none).isEqualTo(0);
        // no delay: plain failures of the life, 1 - exp(-8 [H(150,000) - H(100,000)])
        double plain = new UnseenDefects(new DelayTimeModel(Delay.none(), 1))
                .failureChance(eight(DefectRate.ofLife(life, 1, Delay.none()), 100_000.0), 50_000);
        assertThat(plain).isCloseTo(-Math.expm1(-8 * life.cumulativeHazard(100_000, 50_000)), withinPercentage(1e-6));
    }

    /** Simulated truck of one injector, tests at 20,000 and 35,000 that miss a third, uniform delay to 25,000. */
    @Test
    void agreesWithASimulation() {
        long seed = 61;
        SplittableRandom random = new SplittableRandom(seed);
        double sinceTest = 9_000;
        int trucks = 300_000;
        double rate = 1 / 60_000.0;
        int hit = 0;
        int alive = 0;
        for (int i = 0; i < trucks; i++) {
            boolean failsBefore = false;
            boolean failsAfter = false;
            for (double age = next(random, rate); age < 35_000 + sinceTest; age += next(random, rate)) {
                double fails = age + random.nextDouble(0, 25_000);
                boolean found = found(random, age, fails, 20_000) || found(random, age, fails, 35_000);
                failsBefore |= !found && fails <= 35_000;
                failsAfter |= !found && fails > 35_000 && fails <= 35_000 + sinceTest;
            }
            alive += failsBefore ? 0 : 1;
            hit += !failsBefore && failsAfter ? 1 : 0;
        }
        UnseenDefects unseen = new UnseenDefects(new DelayTimeModel(Delay.uniform(25_000), 2 / 3.0));
        double chance = unseen.failureChance(
                List.of(new TestedInjector(DefectRate.constant(rate), List.of(20_000.0, 35_000.0))), sinceTest);
        double error = Math.sqrt(chance * (1 - chance) / alive);
        assertThat(hit / (double) alive).as("seed %d", seed).isCloseTo(chance, within(4 * error));
    }

    private static double next(SplittableRandom random, double rate) {
        return -Math.log1p(-random.nextDouble()) / rate;
    }

    private static boolean found(SplittableRandom random, double age, double fails, double test) {
        return age < test && fails > test && random.nextDouble() < 2 / 3.0;
    }

    /** Fitted 4,000 after the truck's last test: at 10,000 after it, the same as 6,000 after its own start. */
    @Test
    void anInjectorFittedAfterTheLastTestStartsLater() {
        DelayTimeModel model = new DelayTimeModel(Delay.exponential(MEAN), 0.8);
        UnseenDefects unseen = new UnseenDefects(model);
        DefectRate rate = DefectRate.ofLife(new WeibullLife(2.6, 310_000), 1, model.delay());
        double later = unseen.failureChance(List.of(new TestedInjector(rate.startingAt(4_000), List.of())), 10_000);
        double itself = unseen.failureChance(List.of(new TestedInjector(rate, List.of())), 6_000);
        assertThat(later).isCloseTo(itself, withinPercentage(1e-3));
    }

    @Test
    void refusesTestsOutOfOrder() {
        assertThatThrownBy(() -> new TestedInjector(DefectRate.constant(RATE), List.of(5.0, 4.0)))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("ascending");
    }
}
