package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class C03_PosteriorTest {
    private static final WeibullPrior PRIOR = new WeibullPrior(2, 1.4, 250_000, 1.6);

    private static LifeRecords sample(long seed, int units, WeibullLife life, double end) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] exits = new double[units];
        boolean[] events = new boolean[units];
        for (int i = 0; i < units; i++) {
            double fails = life.quantile(random.nextDouble(1e-12, 1));
            events[i] = fails <= end;
            exits[i] = Math.min(fails, end);
        }
        return LifeRecords.of(exits, events);
    }

    /** With no record the posterior is the prior: means and spreads of the log-normals come back. */
    @Test
    void withoutRecordsItIsThePrior() {
        WeibullPosterior posterior = WeibullPosterior.of(LifeRecords.of(new double[0], new boolean[0]), PRIOR);
        assertThat(posterior.logShapeStdDev()).isCloseTo(Math.log(1.4), withinPercentage(1e-4));
        assertThat(posterior.logScaleStdDev()).isCloseTo(Math.log(1.6), withinPercentage(1e-4));
        assertThat(posterior.centralLife().shape()).isCloseTo(2, withinPercentage(1e-4));
        assertThat(posterior.centralLife().scale()).isCloseTo(250_000, withinPercentage(1e-4));
        // mean of a log-normal: median x exp(variance / 2)
        double variance = Math.log(1.4) * Math.log(1.4);
        assertThat(posterior.meanShape()).isCloseTo(2 * Math.exp(variance / 2), withinPercentage(1e-4));
    }

    /** The grid against a plain sum over a far finer one, three failures among twenty. */
    @Test
    void agreesWithAFineRectangularGrid() {
        double[] exits = new double[20];
        boolean[] events = new boolean[20];
        for (int i = 0; i < 20; i++) {
            exits[i] = 60_000 + 9_000 * i;
            events[i] = i % 7 == 3;
        }
        LifeRecords records = LifeRecords.of(exits, events);
        WeibullPosterior posterior = WeibullPosterior.of(records, PRIOR);
        double[] sums = new double[4];
        for (double u = Math.log(0.2); u < Math.log(20); u += 0.01) {
            for (double v = Math.log(20_000); v < Math.log(4e6); v += 0.01) {
                WeibullLife life = new WeibullLife(Math.exp(u), Math.exp(v));
                double a = (u - Math.log(2)) / Math.log(1.4);
                double b = (v - Math.log(250_000)) / Math.log(1.6);
                double log = -0.5 * (a * a + b * b);
                for (int i = 0; i < 20; i++) {
                    log += (events[i] ? Math.log(life.hazard(exits[i])) : 0) - life.cumulativeHazard(exits[i]);
                }
                double weight = Math.exp(log + 50);
                double alive = weight * life.survival(150_000);
                sums[0] += weight;
                sums[1] += weight * life.shape();
                sums[2] += alive;
                sums[3] += alive * life.conditionalFailure(150_000, 20_000, 2);
            }
        }
        assertThat(posterior.meanShape()).isCloseTo(sums[1] / sums[0], withinPercentage(1e-5));
        assertThat(posterior.survival(150_000)).isCloseTo(sums[2] / sums[0], withinPercentage(1e-5));
        assertThat(posterior.conditionalFailure(150_000, 20_000, 2))
                .isCloseTo(sums[3] / sums[2], withinPercentage(1e-5));
        assertThat(posterior.size()).isLessThan(600);
    }

    @Test
    void growsIntoMaximumLikelihood() {
        WeibullLife truth = new WeibullLife(3.2, 180_000);
        double last = Double.POSITIVE_INFINITY;
        for (int units : new int[] {100, 1_000, 10_000, 100_000}) {
            LifeRecords records = sample(5, units, truth, 190_000);
            WeibullFit fit = WeibullFit.of(records);
            WeibullPosterior posterior = WeibullPosterior.of(records, PRIOR);
            double byFit = fit.life().conditionalFailure(120_000, 18_000, 1.5);
            double off = Math.abs(posterior.conditionalFailure(120_000, 18_000, 1.5) / byFit - 1);
            assertThat(off).as("%d units", units).isLessThan(12.0 / units);
            assertThat(off).isLessThan(last);
            assertThat(posterior.logShapeStdDev())
                    .isCloseTo(fit.shapeStdErr() / fit.shape(), withinPercentage(1_500.0 / units));
            last = off;
        }
    }

    @Test
    void noFailureMovesBeliefToLongerLives() {
        double[] exits = new double[50];
        Arrays.fill(exits, 200_000);
        WeibullPosterior posterior = WeibullPosterior.of(LifeRecords.of(exits, new boolean[50]), PRIOR);
        assertThat(posterior.centralLife().scale()).isGreaterThan(400_000);
        assertThat(posterior.survival(200_000)).isBetween(0.9, 1.0);
    }

    /** A unit outside the records that has come far speaks for longer lives; one inside has spoken already. */
    @Test
    void survivalSoFarCountsOnce() {
        LifeRecords records = sample(8, 12, new WeibullLife(2, 200_000), 150_000);
        WeibullPosterior posterior = WeibullPosterior.of(records, PRIOR);
        double outside = posterior.conditionalFailure(300_000, 10_000, 1);
        double inside = posterior.conditionalFailureOfRecorded(300_000, 10_000, 1);
        assertThat(outside).isLessThan(inside);
        assertThat(posterior.conditionalFailure(0, 50_000, 1)).isCloseTo(1 - posterior.survival(50_000), within(1e-12));
        assertThat(posterior.conditionalFailure(300_000, 0, 1)).isEqualTo(0);
    }
}
