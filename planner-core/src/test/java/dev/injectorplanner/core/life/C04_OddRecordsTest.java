package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A handful of odd records: ties, late entries just before the exit, huge counts. Fitted soundly, or refused in words. */
class C04_OddRecordsTest {

    private static LifeRecords odd(SplittableRandom random) {
        int rows = random.nextInt(1, 9);
        double unit = Math.pow(10, random.nextDouble(0, 7));
        int grid = random.nextInt(2, 30);
        double step = random.nextDouble(0.05, 3);
        double[] entries = new double[rows];
        double[] exits = new double[rows];
        boolean[] events = new boolean[rows];
        long[] counts = new long[rows];
        for (int i = 0; i < rows; i++) {
            exits[i] = unit * (1 + random.nextInt(grid) * step);
            entries[i] = random.nextInt(3) == 0 ? exits[i] * random.nextDouble(0, 0.999) : 0;
            if (random.nextInt(20) == 0) {
                entries[i] = exits[i] * (1 - 1e-9);
            }
            events[i] = random.nextInt(3) == 0;
            counts[i] = random.nextInt(5) == 0 ? random.nextInt(1, 1_000) : 1;
        }
        return LifeRecords.of(entries, exits, events, counts);
    }

    @Test
    void fitsAndLimitsOrAPlainRefusal() {
        long seed = 404;
        SplittableRandom random = new SplittableRandom(seed);
        int fitted = 0;
        int refused = 0;
        for (int round = 0; round < 6_000; round++) {
            LifeRecords records = odd(random);
            double age = records.largestExit();
            double chance = WeibullPosterior.of(records, new WeibullPrior(2, 1.5, age, 2))
                    .conditionalFailure(age, age / 10, 1);
            assertThat(chance).as("seed %d round %d", seed, round).isBetween(0.0, 1.0);
            try {
                sound(WeibullFit.of(records), "seed " + seed + " round " + round);
                fitted++;
            } catch (NoEstimateException e) {
                assertThat(e.getMessage()).contains("Fix: ");
                refused++;
            }
        }
        assertThat(fitted).isGreaterThan(2_000);
        assertThat(refused).isGreaterThan(1_000);
    }

    private static void sound(WeibullFit fit, String where) {
        assertThat(fit.logLikelihood()).as(where).isFinite();
        assertThat(fit.shapeStdErr()).as(where).isPositive().isFinite();
        assertThat(fit.scaleStdErr()).as(where).isPositive().isFinite();
        WeibullIntervals intervals = fit.intervals(0.95);
        around(intervals.shape(), fit.shape(), where);
        around(intervals.scale(), fit.scale(), where);
        around(intervals.b10(), fit.b10(), where);
    }

    private static void around(WeibullIntervals.Pair pair, double value, String where) {
        assertThat(pair.fisher().contains(value)).as(where).isTrue();
        assertThat(pair.profile().contains(value)).as(where).isTrue();
    }

    /**
     * The profile interval of B10 against a plain search: with B10 held at either end, the greatest log-likelihood over
     * all shapes lies 1.9207294 (half the chi-square 0.95 quantile) below the top.
     */
    @Test
    void profileLimitsOfB10LieWhereTheLikelihoodSays() {
        for (String name : List.of("generator-fans", "handbook-20-units", "late-entry-km")) {
            LifeRecords records = DataTable.table(name).lives();
            WeibullFit fit = WeibullFit.of(records);
            WeibullIntervals.Interval limits = fit.intervals(0.95).b10().profile();
            for (double b10 : new double[] {limits.low(), limits.high()}) {
                double most = Double.NEGATIVE_INFINITY;
                for (double shape = 0.2; shape < 8; shape *= 1.0005) {
                    double scale = b10 / Math.pow(-Math.log(0.9), 1 / shape);
                    most = Math.max(most, logLikelihood(records, new WeibullLife(shape, scale)));
                }
                assertThat(fit.logLikelihood() - most).as("%s, %s", name, b10).isCloseTo(1.9207294, within(1e-4));
            }
        }
    }

    private static double logLikelihood(LifeRecords records, WeibullLife life) {
        double sum = 0;
        for (int i = 0; i < records.size(); i++) {
            sum += records.isEvent(i) ? Math.log(life.hazard(records.exit(i))) : 0;
            sum -= life.cumulativeHazard(records.exit(i)) - life.cumulativeHazard(records.entry(i));
        }
        return sum;
    }

    /** Small random tables, many of them separated, collinear or without spread. */
    @Test
    void effectsOrAPlainRefusal() {
        long seed = 405;
        SplittableRandom random = new SplittableRandom(seed);
        int fitted = 0;
        int refused = 0;
        for (int round = 0; round < 5_000; round++) {
            try {
                EffectsFit fit = ProportionalHazards.fit(table(random));
                for (EffectsFit.Effect effect : fit.effects()) {
                    assertThat(effect.value())
                            .as("seed %d round %d", seed, round)
                            .isFinite();
                    assertThat(effect.stdErr())
                            .as("seed %d round %d", seed, round)
                            .isBetween(1e-3, 1e4);
                }
                assertThat(fit.logLikelihood()).isGreaterThanOrEqualTo(fit.logLikelihoodNull() - 1e-9);
                fitted++;
            } catch (NoEstimateException e) {
                assertThat(e.getMessage()).contains("Fix: ");
                refused++;
            }
        }
        assertThat(fitted).isGreaterThan(1_500);
        assertThat(refused).isGreaterThan(1_000);
    }

    private static EffectRecords table(SplittableRandom random) {
        int rows = random.nextInt(2, 14);
        int width = random.nextInt(1, 4);
        double[] starts = new double[rows];
        double[] stops = new double[rows];
        boolean[] events = new boolean[rows];
        double[][] covariates = new double[width][rows];
        List<String> names = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            stops[i] = random.nextInt(1, 10);
            starts[i] = random.nextInt(3) == 0 ? random.nextInt(0, (int) stops[i]) : 0;
            events[i] = random.nextBoolean();
        }
        for (int j = 0; j < width; j++) {
            names.add("x" + j);
            for (int i = 0; i < rows; i++) {
                covariates[j][i] = random.nextInt(3) == 0 ? random.nextDouble() : random.nextInt(0, 3);
            }
        }
        return EffectRecords.of(starts, stops, events, null, names, covariates);
    }
}
