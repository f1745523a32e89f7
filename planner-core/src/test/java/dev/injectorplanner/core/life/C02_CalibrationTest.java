package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What the intervals and chances promise is what happens, on generated fleets whose truth is known. */
class C02_CalibrationTest {
    private static final WeibullLife TRUTH = new WeibullLife(2.6, 260_000);

    private static double draw(SplittableRandom random, WeibullLife life, double age) {
        return age + life.remainingQuantile(age, Math.max(1e-12, random.nextDouble()));
    }

    private static LifeRecords watched(SplittableRandom random, int units) {
        double[] entries = new double[units];
        double[] exits = new double[units];
        boolean[] events = new boolean[units];
        for (int i = 0; i < units; i++) {
            entries[i] = i % 4 == 0 ? random.nextDouble(20_000, 120_000) : 0;
            double end = entries[i] + random.nextDouble(60_000, 320_000);
            double fails = draw(random, TRUTH, entries[i]);
            events[i] = fails <= end;
            exits[i] = Math.min(fails, end);
        }
        return LifeRecords.of(entries, exits, events, null);
    }

    @Test
    void ninetyPercentIntervalsCoverTheTruthAsOftenAsTheySay() {
        long seed = 90_2026;
        SplittableRandom random = new SplittableRandom(seed);
        int repeats = 2_000;
        int[] covered = new int[6];
        for (int i = 0; i < repeats; i++) {
            WeibullIntervals intervals = WeibullFit.of(watched(random, 90)).intervals(0.90);
            count(covered, 0, intervals.shape(), TRUTH.shape());
            count(covered, 2, intervals.scale(), TRUTH.scale());
            count(covered, 4, intervals.b10(), TRUTH.quantile(0.1));
        }
        for (int i = 0; i < covered.length; i++) {
            assertThat(covered[i] / (double) repeats)
                    .as("seed %d, kind %d (Fisher, profile for shape, scale, B10)", seed, i)
                    .isBetween(0.87, 0.93);
        }
    }

    private static void count(int[] covered, int at, WeibullIntervals.Pair pair, double truth) {
        covered[at] += pair.fisher().contains(truth) ? 1 : 0;
        covered[at + 1] += pair.profile().contains(truth) ? 1 : 0;
    }

    /** One unit in service: its chance as the fit gives it, and whether it then failed. */
    private record Forecast(double chance, boolean failed) {}

    @Test
    void twelveWeekChancesMatchWhatThenHappens() {
        long seed = 12_2026;
        SplittableRandom random = new SplittableRandom(seed);
        LifeRecords history = watched(random, 6_000);
        WeibullFit fit = WeibullFit.of(history);
        WeibullPosterior posterior = WeibullPosterior.of(history, new WeibullPrior(2, 1.5, 300_000, 2));
        List<Forecast> byFit = new ArrayList<>();
        List<Forecast> byPosterior = new ArrayList<>();
        for (int i = 0; i < 20_000; i++) {
            double age = random.nextDouble(0, 350_000);
            double next = 12 * random.nextDouble(500, 2_500);
            double multiplier = random.nextDouble(0.5, 5);
            boolean failed = draw(random, TRUTH.withHazardTimes(multiplier), age) <= age + next;
            byFit.add(new Forecast(fit.life().conditionalFailure(age, next, multiplier), failed));
            byPosterior.add(new Forecast(posterior.conditionalFailure(age, next, multiplier), failed));
        }
        calibrated(byFit, seed);
        calibrated(byPosterior, seed);
    }

    /** Ten bins of equal size: failures within three binomial standard deviations of the sum of the chances. */
    private static void calibrated(List<Forecast> forecasts, long seed) {
        List<Forecast> ordered = new ArrayList<>(forecasts);
        ordered.sort(Comparator.comparingDouble(Forecast::chance));
        int size = ordered.size() / 10;
        for (int bin = 0; bin < 10; bin++) {
            List<Forecast> part = ordered.subList(bin * size, (bin + 1) * size);
            double expected = part.stream().mapToDouble(Forecast::chance).sum();
            double variance = part.stream()
                    .mapToDouble(f -> f.chance() * (1 - f.chance()))
                    .sum();
            long failed = part.stream().filter(Forecast::failed).count();
            assertThat(Math.abs(failed - expected))
                    .as("seed %d, bin %d: %d failed, %.1f forecast", seed, bin, failed, expected)
                    .isLessThan(3 * Math.sqrt(variance));
        }
    }
}
