package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Laws that any right fit obeys, on seeded random records; extremes of size, age and shape. */
class C01_FitLawsTest {
    private static final long SEED = 20260301;

    private static void near(double value, double expected, double relative) {
        assertThat(value).as("seed %d", SEED).isCloseTo(expected, withinPercentage(100 * relative));
    }

    @Test
    void scalingAllAgesScalesTheScaleOnly() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int round = 0; round < 40; round++) {
            RandomLives lives = RandomLives.draw(random, random.nextInt(5, 300));
            double k = Math.pow(10, random.nextDouble(-6, 6));
            WeibullFit fit = WeibullFit.of(lives.records());
            WeibullFit scaled = WeibullFit.of(lives.times(k).records());
            near(scaled.shape(), fit.shape(), 1e-9);
            near(scaled.scale(), k * fit.scale(), 1e-9);
            near(scaled.shapeStdErr(), fit.shapeStdErr(), 1e-7);
            near(scaled.scaleStdErr(), k * fit.scaleStdErr(), 1e-7);
            assertThat(scaled.logLikelihood())
                    .isCloseTo(fit.logLikelihood() - fit.events() * Math.log(k), within(1e-6));
        }
    }

    @Test
    void twoCopiesHalveTheVariances() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int round = 0; round < 40; round++) {
            RandomLives lives = RandomLives.draw(random, random.nextInt(5, 300));
            WeibullFit once = WeibullFit.of(lives.records());
            WeibullFit twice = WeibullFit.of(lives.doubled().records());
            long[] twos = new long[lives.size()];
            Arrays.fill(twos, 2);
            WeibullFit counted = WeibullFit.of(lives.records(twos));
            near(twice.shape(), once.shape(), 1e-9);
            near(twice.shapeStdErr(), once.shapeStdErr() / Math.sqrt(2), 1e-7);
            near(twice.scaleStdErr(), once.scaleStdErr() / Math.sqrt(2), 1e-7);
            near(counted.scaleStdErr(), twice.scaleStdErr(), 1e-9);
            near(counted.logLikelihood(), twice.logLikelihood(), 1e-12);
        }
    }

    @Test
    void cuttingLivesIntoPiecesChangesNothing() {
        SplittableRandom random = new SplittableRandom(SEED + 2);
        for (int round = 0; round < 40; round++) {
            RandomLives lives = RandomLives.draw(random, random.nextInt(5, 200));
            WeibullFit whole = WeibullFit.of(lives.records());
            RandomLives pieces = lives.cut(random);
            WeibullFit cut = WeibullFit.of(pieces.records());
            near(cut.shape(), whole.shape(), 1e-8);
            near(cut.scale(), whole.scale(), 1e-8);
            near(cut.logLikelihood(), whole.logLikelihood(), 1e-10);
            near(cut.shapeStdErr(), whole.shapeStdErr(), 1e-6);
            KaplanMeier curve = KaplanMeier.of(lives.records());
            KaplanMeier cutCurve = KaplanMeier.of(pieces.records());
            for (KaplanMeier.Point point : curve.points()) {
                assertThat(cutCurve.survival(point.age())).isCloseTo(point.survival(), within(1e-12));
            }
        }
    }

    @Test
    void extremesOfShapeAgeAndTies() {
        SplittableRandom random = new SplittableRandom(SEED + 3);
        for (double shape : new double[] {0.3, 0.7, 1, 3, 8, 15}) {
            for (double scale : new double[] {3, 400, 1e7}) {
                double[] exits = random.doubles(20_000)
                        .map(u -> Math.max(1, Math.rint(scale * Math.pow(-Math.log1p(-u), 1 / shape))))
                        .toArray();
                boolean[] events = new boolean[exits.length];
                Arrays.fill(events, true);
                WeibullFit fit = WeibullFit.of(LifeRecords.of(exits, events));
                // ages below 1 are read as 1 and all are rounded: the truth comes back only where that is slight
                if (scale == 1e7 || (scale == 400 && shape >= 1)) {
                    near(fit.scale(), scale, 0.03 / Math.min(1, shape));
                    near(fit.shape(), shape, 0.05);
                }
                WeibullIntervals intervals = fit.intervals(0.9);
                assertThat(intervals.shape().profile().contains(fit.shape())).isTrue();
                near(
                        intervals.scale().profile().low(),
                        intervals.scale().fisher().low(),
                        0.02);
                near(intervals.b10().profile().high(), intervals.b10().fisher().high(), 0.02);
            }
        }
    }

    /** One failure outlived by others has a maximum: wide, but stated. */
    @Test
    void oneFailureThatOthersOutlived() {
        WeibullFit fit = WeibullFit.of(
                LifeRecords.of(new double[] {50_000, 90_000, 120_000}, new boolean[] {true, false, false}));
        assertThat(fit.events()).isEqualTo(1);
        WeibullIntervals intervals = fit.intervals(0.95);
        assertThat(intervals.shape().profile().low()).isLessThan(fit.shape());
        assertThat(intervals.shape().profile().high()).isGreaterThan(fit.shape());
        assertThat(intervals.scale().profile().low()).isBetween(50_000.0, fit.scale());
        assertThat(intervals.scale().profile().high()).isGreaterThan(1e7);
        assertThat(intervals.b10().profile().low()).isLessThan(fit.b10());
    }

    @Test
    void refusesInWordsWhereThereIsNoMaximum() {
        assertThatThrownBy(() -> WeibullFit.of(LifeRecords.of(new double[] {5, 6, 7}, new boolean[3])))
                .isInstanceOf(NoEstimateException.class)
                .hasMessageContaining("no failure among the 3 units");
        assertThatThrownBy(
                        () -> WeibullFit.of(LifeRecords.of(new double[] {5, 6, 7}, new boolean[] {false, false, true})))
                .isInstanceOf(NoEstimateException.class)
                .hasMessageContaining("The one failure happened at the largest age in the records, 7");
        assertThatThrownBy(
                        () -> WeibullFit.of(LifeRecords.of(new double[] {7, 6, 7}, new boolean[] {true, false, true})))
                .isInstanceOf(NoEstimateException.class)
                .hasMessageContaining("All failures happened at the largest age");
        assertThatThrownBy(() -> WeibullFit.of(LifeRecords.of(
                        new double[] {100, 100, 100, 100},
                        new double[] {101, 102, 101, 400},
                        new boolean[] {true, true, true, false},
                        null)))
                .isInstanceOf(NoEstimateException.class)
                .hasMessageContaining("no Weibull with a shape of 0.02 or more fits");
        assertThatThrownBy(() -> LifeRecords.of(new double[] {5}, new double[] {5}, new boolean[1], null))
                .hasMessageContaining("entry of row 1")
                .hasMessageContaining("below the exit");
    }
}
