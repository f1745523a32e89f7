package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Times beside the answers: {@code mvn -pl planner-core -Pbenchmark test}. */
@Tag("benchmark")
class LifeBenchmark {
    private static final WeibullLife TRUTH = new WeibullLife(2.2, 300_000);
    private static final int ROUNDS = 5;

    @Test
    void weibullFitAndKaplanMeierBySize() {
        run(sample(50_000, false)); // lets the compiler see the code once
        run(sample(50_000, true));
        System.out.printf(
                Locale.ROOT,
                "%nlife from shape %.1f, scale %,.0f km, watched to 100,000 to 400,000 km; median of %d runs%n",
                TRUTH.shape(),
                TRUTH.scale(),
                ROUNDS);
        System.out.printf(
                "%10s %6s %9s %9s %9s %9s %9s %12s%n",
                "records", "entry", "fit s", "limits s", "curve s", "failed", "shape", "scale");
        for (boolean lateEntry : new boolean[] {false, true}) {
            for (int size : new int[] {1_000, 100_000, 1_000_000}) {
                run(sample(size, lateEntry), size, lateEntry);
            }
        }
    }

    private static void run(LifeRecords records) {
        for (int i = 0; i < ROUNDS; i++) {
            assertThat(WeibullFit.of(records).intervals(0.95).shape().profile().low())
                    .isPositive();
            assertThat(KaplanMeier.of(records).points()).isNotEmpty();
        }
    }

    private static void run(LifeRecords records, int size, boolean lateEntry) {
        WeibullFit fit = WeibullFit.of(records);
        double fitSeconds = seconds(() -> WeibullFit.of(records));
        double limitSeconds = seconds(() -> fit.intervals(0.95));
        double curveSeconds = seconds(() -> KaplanMeier.of(records));
        System.out.printf(
                Locale.ROOT,
                "%,10d %6s %9.4f %9.4f %9.4f %,9d %9.5f %,12.1f%n",
                size,
                lateEntry ? "late" : "new",
                fitSeconds,
                limitSeconds,
                curveSeconds,
                fit.events(),
                fit.shape(),
                fit.scale());
        assertThat(fit.shape()).isBetween(TRUTH.shape() * 0.8, TRUTH.shape() * 1.2);
    }

    private static double seconds(Supplier<?> work) {
        double[] times = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long start = System.nanoTime();
            assertThat(work.get()).isNotNull();
            times[i] = (System.nanoTime() - start) / 1e9;
        }
        Arrays.sort(times);
        return times[ROUNDS / 2];
    }

    static LifeRecords sample(int size, boolean lateEntry) {
        SplittableRandom random = new SplittableRandom(size);
        double[] entries = new double[size];
        double[] exits = new double[size];
        boolean[] events = new boolean[size];
        for (int i = 0; i < size; i++) {
            entries[i] = lateEntry && i % 2 == 0 ? random.nextDouble(1, 90_000) : 0;
            double end = random.nextDouble(100_000, 400_000);
            double fails = entries[i] + TRUTH.remainingQuantile(entries[i], random.nextDouble(1e-12, 1));
            events[i] = fails < end;
            exits[i] = Math.min(fails, end);
        }
        return LifeRecords.of(entries, exits, events, null);
    }
}
