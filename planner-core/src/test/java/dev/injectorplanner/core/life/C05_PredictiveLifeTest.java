package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Lives that are known only so well, with early failures beside wear: worked by hand where wear is exponential or certain, else
 * by the laws that survival, hazard and mean obey.
 */
class C05_PredictiveLifeTest {
    private static final WeibullPrior PRIOR = new WeibullPrior(2, 1.4, 250_000, 1.6);

    private static PredictiveLife predictive() {
        return PredictiveLife.of(someRecords(), new EarlyFailures(0.05, 9_000));
    }

    private static WeibullPosterior someRecords() {
        double[] exits = new double[20];
        boolean[] events = new boolean[20];
        for (int i = 0; i < 20; i++) {
            exits[i] = 60_000 + 9_000 * i;
            events[i] = i % 7 == 3;
        }
        return WeibullPosterior.of(LifeRecords.of(exits, events), PRIOR);
    }

    /** A tenth fails early, after 1,000 km on average: S(1000) = 1 - 0.1 (1 - 1/e) = 0.93678794. */
    @Test
    void early_failures_by_hand() {
        EarlyFailures early = new EarlyFailures(0.1, 1_000);
        assertThat(early.survival(0)).isEqualTo(1);
        assertThat(early.survival(1_000)).isCloseTo(0.93678794411714, within(1e-12));
        assertThat(early.survival(1e9)).isCloseTo(0.9, within(1e-12));
        assertThat(early.hazard(0)).isCloseTo(1e-4, within(1e-15));
        assertThat(early.hazard(1_000)).isCloseTo(0.1 / 1_000 * Math.exp(-1) / 0.93678794411714, within(1e-15));
        assertThat(early.cumulativeHazard(0, 1_000)).isCloseTo(-Math.log(0.93678794411714), within(1e-12));
        assertThat(early.cumulativeHazard(500, 500))
                .isCloseTo(Math.log(early.survival(500) / early.survival(1_000)), within(1e-12));
        assertThat(early.arising(400, 300)).isEqualTo(new EarlyFailures(0.1, 700).hazard(400));
        assertThat(early.arising(400, 900)).isEqualTo(new EarlyFailures(0.1, 250).hazard(400));
        assertThat(EarlyFailures.NONE.hazard(5)).isZero();
        assertThat(EarlyFailures.NONE.arising(5, 1)).isZero();
        assertThat(EarlyFailures.NONE.cumulativeHazard(0, 5)).isZero();
        assertThatThrownBy(() -> new EarlyFailures(1, 1_000)).hasMessageContaining("share of early failures");
        assertThatThrownBy(() -> new EarlyFailures(0.1, 0)).hasMessageContaining("mean age of early failures");
    }

    /** Shape 2, scale 100: S(100) = 1/e, h(50) = 2 x 50 / 100^2, mean 100 x Gamma(1.5) = 88.6226925. */
    @Test
    void a_life_known_for_certain_is_its_wear() {
        WeibullLife wear = new WeibullLife(2, 100);
        PredictiveLife life = PredictiveLife.certain(wear);
        assertThat(life.size()).isEqualTo(1);
        assertThat(life.weight(0)).isEqualTo(1);
        assertThat(life.wear(0)).isEqualTo(wear);
        assertThat(life.early()).isEqualTo(EarlyFailures.NONE);
        assertThat(life.survival(100)).isCloseTo(Math.exp(-1), within(1e-12));
        assertThat(life.hazard(50)).isCloseTo(0.01, within(1e-12));
        assertThat(life.hazard(0, 50)).isCloseTo(0.01, within(1e-12));
        assertThat(life.hazard(1e9)).as("all gone: of the last").isCloseTo(2 * 1e9 / 1e4, withinPercentage(1e-9));
        assertThat(life.meanLife()).isCloseTo(88.6226925452758, withinPercentage(1e-6));
        assertThat(life.meanLifeWithin(100)).isCloseTo(wear.meanLifeWithin(100), within(1e-12));
        assertThat(life.longestLife()).isEqualTo(wear.longestLife());
        assertThat(life.conditionalFailure(50, 50, 1)).isCloseTo(1 - Math.exp(-0.75), within(1e-12));
        assertThat(life.conditionalFailure(50, 50, 2)).isCloseTo(1 - Math.exp(-1.5), within(1e-12));
        assertThat(life.cumulativeHazard(50, 50)).isCloseTo(0.75, within(1e-12));
        assertThatThrownBy(() -> life.conditionalFailure(1, 1, 0)).hasMessageContaining("hazard multiplier");
    }

    /** Exponential wear of mean 100, a fifth flawed with mean 10: mean 0.8 x 100 + 0.2 x 1 / (1/10 + 1/100) = 81.818. */
    @Test
    void early_failures_shorten_the_mean_as_in_closed_form() {
        PredictiveLife life = PredictiveLife.certain(new WeibullLife(1, 100)).with(new EarlyFailures(0.2, 10));
        double both = 1 / 0.11;
        assertThat(life.survival(10)).isCloseTo((0.8 + 0.2 * Math.exp(-1)) * Math.exp(-0.1), within(1e-12));
        assertThat(life.meanLife()).isCloseTo(80 + 0.2 * both, withinPercentage(1e-4));
        assertThat(life.meanLifeWithin(50))
                .isCloseTo(80 * -Math.expm1(-0.5) + 0.2 * both * -Math.expm1(-50 / both), withinPercentage(1e-4));
        assertThat(life.hazard(0)).isCloseTo(0.01 + 0.02, within(1e-12));
        assertThat(life.hazard(0, 0)).isCloseTo(0.01 + 0.02, within(1e-12));
        assertThat(life.conditionalFailure(0, 10, 1)).isCloseTo(1 - life.survival(10), within(1e-12));
    }

    /** The nine pairs have the mean, spread and correlation of the posterior they stand for. */
    @Test
    void the_pairs_have_the_moments_of_the_posterior() {
        WeibullPosterior posterior = someRecords();
        PredictiveLife life = PredictiveLife.of(posterior, EarlyFailures.NONE);
        assertThat(life.size()).isEqualTo(9);
        double u0 = Math.log(posterior.centralLife().shape());
        double v0 = Math.log(posterior.centralLife().scale());
        double[] sums = new double[6];
        for (int i = 0; i < life.size(); i++) {
            double u = Math.log(life.wear(i).shape()) - u0;
            double v = Math.log(life.wear(i).scale()) - v0;
            double[] moments = {1, u, v, u * u, v * v, u * v};
            for (int k = 0; k < moments.length; k++) {
                sums[k] += life.weight(i) * moments[k];
            }
        }
        assertThat(sums[0]).isCloseTo(1, within(1e-12));
        assertThat(sums[1]).isCloseTo(0, within(1e-12));
        assertThat(sums[2]).isCloseTo(0, within(1e-12));
        assertThat(Math.sqrt(sums[3])).isCloseTo(posterior.logShapeStdDev(), within(1e-12));
        assertThat(Math.sqrt(sums[4])).isCloseTo(posterior.logScaleStdDev(), within(1e-12));
        assertThat(sums[5]).isCloseTo(posterior.logCovariance(), within(1e-12));
    }

    /** Close to the average over the whole posterior: survival to a tenth of a percent point at ages that matter. */
    @Test
    void nine_pairs_say_what_the_whole_posterior_says() {
        WeibullPosterior posterior = someRecords();
        PredictiveLife life = PredictiveLife.of(posterior, EarlyFailures.NONE);
        for (double age : new double[] {50_000, 150_000, 250_000}) {
            assertThat(life.survival(age)).isCloseTo(posterior.survival(age), within(0.005));
        }
    }

    @Test
    void survival_hazard_and_mean_belong_together() {
        PredictiveLife life = predictive();
        double average = 0;
        double failing = 0;
        for (int i = 0; i < life.size(); i++) {
            average += life.weight(i) * life.wear(i).survival(120_000);
            failing += life.weight(i)
                    * -Math.expm1(-1.5
                            * (life.wear(i).cumulativeHazard(120_000, 30_000)
                                    + life.early().cumulativeHazard(120_000, 30_000)));
        }
        assertThat(life.survival(120_000)).isCloseTo(average * life.early().survival(120_000), within(1e-12));
        assertThat(life.conditionalFailure(120_000, 30_000, 1.5)).isCloseTo(failing, within(1e-12));
        for (double age : new double[] {4_000, 60_000, 200_000}) {
            double step = age * 1e-5;
            double slope = (Math.log(life.survival(age - step)) - Math.log(life.survival(age + step))) / (2 * step);
            assertThat(life.hazard(age)).isCloseTo(slope, withinPercentage(1e-4));
            assertThat(life.hazard(4, age))
                    .isCloseTo(life.wear(4).hazard(age) + life.early().hazard(age), within(1e-18));
        }
        assertThat(life.meanLifeWithin(100_000))
                .isCloseTo(integral(life::survival, 100_000, 20_000), withinPercentage(1e-4));
        assertThat(life.meanLife()).isCloseTo(life.meanLifeWithin(life.longestLife()), within(1e-9));
        for (int i = 0; i < life.size(); i++) {
            assertThat(life.longestLife()).isGreaterThanOrEqualTo(life.wear(i).longestLife());
        }
        assertThat(life.with(EarlyFailures.NONE).survival(120_000)).isCloseTo(average, within(1e-12));
    }

    private static double integral(DoubleUnaryOperator f, double until, int pieces) {
        double step = until / pieces;
        double sum = 0;
        for (int i = 0; i < pieces; i++) {
            sum += f.applyAsDouble((i + 0.5) * step);
        }
        return sum * step;
    }
}
