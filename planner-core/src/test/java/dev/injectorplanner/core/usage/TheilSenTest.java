package dev.injectorplanner.core.usage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.testkit.Published;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Points, slopes and intercepts: published/theil_sen_points.md. */
class TheilSenTest {
    private static TheilSen fit(String name) {
        double[][] columns = new double[2][];
        for (int column = 0; column < 2; column++) {
            int at = column + 1;
            columns[column] = Published.rows("theil_sen_points.csv").stream()
                    .filter(row -> row[0].equals(name))
                    .mapToDouble(row -> Double.parseDouble(row[at]))
                    .toArray();
        }
        return TheilSen.fit(columns[0], columns[1]);
    }

    @Test
    void cloudSeedingOfHollanderAndWolfe() {
        TheilSen line = fit("cloud");
        assertThat(line.slope()).isCloseTo(-0.05625, within(1e-13));
        assertThat(line.intercept()).isCloseTo(1.31625, within(1e-12));
        assertThat(line.pairs()).isEqualTo(10);
    }

    @Test
    void oneMistypedReadingDoesNotMoveIt() {
        TheilSen line = fit("typing error");
        assertThat(line.slope()).isCloseTo(268.040816326531, within(1e-11 * 268));
        assertThat(line.intercept()).isCloseTo(182448.040816327, within(1e-8));
        assertThat(line.pairs()).isEqualTo(45);
    }

    @Test
    void pairsOfOneXAreLeftOut() {
        TheilSen line = fit("ties");
        assertThat(line.slope()).isCloseTo(1.25, within(1e-12));
        assertThat(line.intercept()).isCloseTo(0.25, within(1e-12));
        assertThat(line.pairs()).isEqualTo(8);
    }

    @Test
    void oneMomentAloneTellsNoSlope() {
        assertThatThrownBy(() -> TheilSen.fit(new double[] {5, 5}, new double[] {1, 2}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 points");
    }

    @Test
    void stretchingAndTiltingThePointsDoesTheSameToTheSlope() {
        for (long seed = 1; seed <= 50; seed++) {
            Random random = new Random(seed);
            int n = 3 + random.nextInt(40);
            double[] x = random.doubles(n, 0, 100).toArray();
            double[] y = random.doubles(n, -50, 50).toArray();
            double[] tilted = new double[n];
            for (int i = 0; i < n; i++) {
                tilted[i] = 3 * y[i] + 2 * x[i] + 7;
            }
            double expected = 3 * TheilSen.fit(x, y).slope() + 2;
            assertThat(TheilSen.fit(x, tilted).slope()).as("seed %d", seed).isCloseTo(expected, within(1e-9));
        }
    }

    @Test
    void selectionFindsTheMedianThatSortingFinds() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            double[] values = random.doubles(1 + random.nextInt(60))
                    .map(v -> Math.rint(v * 9))
                    .toArray();
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            int n = sorted.length;
            double expected = (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
            assertThat(Medians.median(values, n)).as("seed %d", seed).isEqualTo(expected);
        }
    }
}
