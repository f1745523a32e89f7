package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Early failures are found where made-up lives have them, and not where they have none. */
class C06_EarlyFailureFitTest {
    private static final WeibullLife WEAR = new WeibullLife(3, 300_000);

    /** Lives watched for 50,000 to 450,000 km, a share of them flawed. */
    private static final WeibullPrior USUAL = new WeibullPrior(2.5, 1.5, 400_000, 1.6);

    private static LifeRecords lives(long seed, int units, double share, double mean) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] exits = new double[units];
        boolean[] events = new boolean[units];
        for (int i = 0; i < units; i++) {
            double wear = WEAR.remainingQuantile(0, random.nextDouble(1e-9, 1));
            double early = random.nextDouble() < share ? -mean * Math.log(random.nextDouble(1e-9, 1)) : wear;
            double watched = random.nextDouble(50_000, 450_000);
            exits[i] = Math.min(watched, Math.min(wear, early));
            events[i] = exits[i] < watched;
        }
        return LifeRecords.of(exits, events);
    }

    @Test
    void a_share_of_early_failures_is_found_beside_the_wear() {
        for (long seed = 1; seed <= 4; seed++) {
            EarlyFailureFit.Found found =
                    EarlyFailureFit.of(lives(seed, 900, 0.12, 10_000), USUAL).orElseThrow();
            assertThat(found.early().share()).as("seed %d", seed).isBetween(0.07, 0.18);
            assertThat(found.early().meanAge()).as("seed %d", seed).isBetween(6_000.0, 16_000.0);
            assertThat(found.wear().shape()).as("seed %d", seed).isBetween(2.5, 3.7);
            assertThat(found.wear().scale()).as("seed %d", seed).isBetween(270_000.0, 335_000.0);
            assertThat(found.gain()).isGreaterThan(10);
            assertThat(found.isEarly(3_000)).isTrue();
            assertThat(found.isEarly(250_000)).isFalse();
        }
    }

    @Test
    void wear_alone_is_taken_for_nothing_else() {
        for (long seed = 11; seed <= 18; seed++) {
            assertThat(EarlyFailureFit.of(lives(seed, 900, 0, 10_000), USUAL))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    @Test
    void too_few_failures_say_nothing() {
        assertThat(EarlyFailureFit.of(lives(1, 12, 0.5, 5_000), USUAL)).isEmpty();
        assertThat(EarlyFailureFit.of(LifeRecords.of(new double[0], new boolean[0]), USUAL))
                .isEmpty();
    }
}
