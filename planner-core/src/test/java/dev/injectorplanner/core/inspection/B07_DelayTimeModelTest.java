package dev.injectorplanner.core.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.injectorplanner.core.life.WeibullLife;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Christer and Waller (1984), against closed forms worked out here, limit cases and a simulation. */
class B07_DelayTimeModelTest {
    private static final double RATE = 8 / 300_000.0;
    private static final DefectRate CONSTANT = DefectRate.constant(RATE);
    private static final InspectionCosts COSTS = new InspectionCosts(60, 700, 4_900);
    private static final double MEAN = 15_000;

    /**
     * Constant rate k, exponential delay of mean m, perfect tests: failures in T are k [T - m (1 - exp(-T / m))], so
     * C(T) = [inspect + k (failure T - (failure - planned) m (1 - exp(-T / m)))] / T, least where inspect = k (failure
     * - planned) m [1 - exp(-x) (1 + x)] with x = T / m.
     */
    @Test
    void constantRateAndExponentialDelay() {
        DelayTimeModel model = new DelayTimeModel(Delay.exponential(MEAN), 1);
        for (double t : new double[] {100, 5_000, 40_000, 300_000}) {
            double part = MEAN * -Math.expm1(-t / MEAN);
            assertThat(model.expectedFailures(CONSTANT, t)).isCloseTo(RATE * (t - part), within(1e-9));
            assertThat(model.costRate(CONSTANT, COSTS, t))
                    .isCloseTo((60 + RATE * (4_900 * t - 4_200 * part)) / t, withinPercentage(1e-7));
        }
        InspectionPolicy policy = model.bestInterval(CONSTANT, COSTS, 200_000);
        double x = policy.interval() / MEAN;
        assertThat(RATE * 4_200 * MEAN * (1 - Math.exp(-x) * (1 + x))).isCloseTo(60, withinPercentage(1e-3));
        assertThat(policy.costRate()).isLessThan(policy.costRateWithoutTests());
        assertThat(policy.costRateWithoutTests()).isCloseTo(RATE * 4_900, withinPercentage(1e-8));
        assertThat(policy.failureShare()).isCloseTo(1 + Math.expm1(-x) / x, withinPercentage(1e-6));
    }

    /**
     * The same with tests that find a defect with chance p: a defect is found with chance p exp(-w / m) / (1 - (1 - p)
     * exp(-T / m)), w to the next test (geometric series), so failures in T are k [T - p m (1 - exp(-T / m)) / (1 - (1
     * - p) exp(-T / m))].
     */
    @Test
    void imperfectTestsWithExponentialDelay() {
        for (double p : new double[] {0.05, 0.3, 0.8, 1}) {
            DelayTimeModel model = new DelayTimeModel(Delay.exponential(MEAN), p);
            for (double t : new double[] {500, 5_000, 40_000}) {
                double found = p / (1 - (1 - p) * Math.exp(-t / MEAN));
                assertThat(model.failureChance(1_000, t)).isCloseTo(1 - found * Math.exp(-1_000 / MEAN), within(1e-10));
                assertThat(model.expectedFailures(CONSTANT, t))
                        .isCloseTo(RATE * (t - found * MEAN * -Math.expm1(-t / MEAN)), within(1e-8));
            }
        }
    }

    /**
     * Constant rate, delay uniform over 0 to L, perfect tests: for T up to L failures are k T^2 / (2 L), so C(T) =
     * inspect / T + k planned + k (failure - planned) T / (2 L), least at T = sqrt(2 L inspect / (k (failure -
     * planned))); beyond L, failures are k (T - L / 2).
     */
    @Test
    void constantRateAndUniformDelay() {
        double longest = 30_000;
        DelayTimeModel model = new DelayTimeModel(Delay.uniform(longest), 1);
        assertThat(model.expectedFailures(CONSTANT, 12_000))
                .isCloseTo(RATE * 12_000 * 12_000 / (2 * longest), withinPercentage(1e-7));
        assertThat(model.expectedFailures(CONSTANT, 90_000)).isCloseTo(RATE * 75_000, withinPercentage(1e-7));
        InspectionPolicy policy = model.bestInterval(CONSTANT, COSTS, 200_000);
        double best = Math.sqrt(2 * longest * 60 / (RATE * 4_200));
        assertThat(best).isLessThan(longest);
        assertThat(policy.interval()).isCloseTo(best, withinPercentage(1e-3));
        assertThat(policy.costRate())
                .isCloseTo(60 / best + RATE * 700 + RATE * 4_200 * best / (2 * longest), withinPercentage(1e-7));
    }

    /** No delay: nothing can be found. Endless delay: nothing fails. Blind test: nothing is found. Never test. */
    @Test
    void limitCasesNeverTest() {
        DelayTimeModel none = new DelayTimeModel(Delay.none(), 1);
        assertThat(none.expectedFailures(CONSTANT, 10_000)).isCloseTo(RATE * 10_000, withinPercentage(1e-8));
        assertThat(none.bestInterval(CONSTANT, COSTS, 200_000).interval()).isNull();
        DelayTimeModel endless = new DelayTimeModel(Delay.endless(), 1);
        assertThat(endless.expectedFailures(CONSTANT, 10_000)).isEqualTo(0);
        InspectionPolicy never = endless.bestInterval(CONSTANT, COSTS, 200_000);
        assertThat(never.interval()).isNull();
        assertThat(never.costRate()).isEqualTo(0);
        DelayTimeModel blind = new DelayTimeModel(Delay.exponential(MEAN), 0);
        assertThat(blind.failureChance(10, 10_000)).isEqualTo(1);
        InspectionPolicy useless = blind.bestInterval(CONSTANT, COSTS, 200_000);
        assertThat(useless.interval()).isNull();
        assertThat(useless.costRate()).isCloseTo(RATE * 4_900, withinPercentage(1e-8));
        // a test dearer than all it could save: inspect > k (failure - planned) m
        DelayTimeModel perfect = new DelayTimeModel(Delay.exponential(MEAN), 1);
        assertThat(perfect.bestInterval(CONSTANT, new InspectionCosts(1_700, 700, 4_900), 500_000)
                        .interval())
                .isNull();
        assertThat(perfect.bestInterval(CONSTANT, new InspectionCosts(1_600, 700, 4_900), 500_000)
                        .interval())
                .isNotNull();
    }

    @Test
    void betterTestsNeverCostMore() {
        double last = Double.POSITIVE_INFINITY;
        for (double p = 0; p <= 1; p += 0.1) {
            DelayTimeModel model = new DelayTimeModel(Delay.weibull(1.8, 20_000), Math.min(1, p));
            double rate = model.bestInterval(CONSTANT, COSTS, 200_000).costRate();
            assertThat(rate).isLessThanOrEqualTo(last * (1 + 1e-9));
            last = rate;
        }
    }

    /** Simulated: Poisson defects at a rate that rises between tests, Weibull delays, tests that miss one in four. */
    @Test
    void agreesWithASimulation() {
        long seed = 1984;
        SplittableRandom random = new SplittableRandom(seed);
        double interval = 12_000;
        WeibullLife delay = new WeibullLife(1.6, 14_000);
        DefectRate rising = u -> RATE * (0.5 + u / interval);
        DelayTimeModel model = new DelayTimeModel(Delay.weibull(1.6, 14_000), 0.75);
        int defects = 400_000;
        int failed = 0;
        for (int i = 0; i < defects; i++) {
            // inverse of the share of the rate up to u: (0.5 u + u^2 / 2) over 1, u in intervals
            double u = (-0.5 + Math.sqrt(0.25 + 2 * random.nextDouble())) * interval;
            double fails = u + delay.quantile(Math.max(1e-15, random.nextDouble()));
            double test = interval;
            while (fails > test && random.nextDouble() >= 0.75) {
                test += interval;
            }
            failed += fails <= test ? 1 : 0;
        }
        double share = model.expectedFailures(rising, interval) / (RATE * interval);
        double error = Math.sqrt(share * (1 - share) / defects);
        assertThat(failed / (double) defects).as("seed %d", seed).isCloseTo(share, within(4 * error));
    }

    /** For the long run, one defect an injector's life: cylinders over the mean life, or F over the mean cycle. */
    @Test
    void longRunRateOfAnEngine() {
        WeibullLife life = new WeibullLife(1, 250_000);
        assertThat(DefectRate.longRun(life, 6, Double.POSITIVE_INFINITY).at(0)).isCloseTo(6 / 250_000.0, within(1e-12));
        assertThat(DefectRate.longRun(life, 6, 90_000).at(0)).isCloseTo(6 / 250_000.0, within(1e-12));
        WeibullLife wearing = new WeibullLife(3, 250_000);
        assertThat(DefectRate.longRun(wearing, 1, 100_000).at(0))
                .isLessThan(DefectRate.longRun(wearing, 1, 200_000).at(0));
    }
}
