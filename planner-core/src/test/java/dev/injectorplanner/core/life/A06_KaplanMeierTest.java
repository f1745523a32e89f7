package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class A06_KaplanMeierTest {

    /** Digits from survfit of R survival 3.5-3; sources of the data in the notes beside the tables. */
    @ParameterizedTest
    @ValueSource(strings = {"generator-fans", "handbook-20-units", "late-entry-km"})
    void curvesOfPublishedData(String name) {
        DataTable expected = DataTable.table(name + "-curve");
        List<KaplanMeier.Point> points =
                KaplanMeier.of(DataTable.table(name).lives()).points();
        assertThat(points).hasSize(expected.size());
        for (int i = 0; i < points.size(); i++) {
            KaplanMeier.Point point = points.get(i);
            assertThat(point.age()).isEqualTo(expected.column("age")[i]);
            assertThat((double) point.atRisk()).isEqualTo(expected.column("at_risk")[i]);
            assertThat((double) point.events()).isEqualTo(expected.column("events")[i]);
            assertThat((double) point.suspensions()).isEqualTo(expected.column("suspensions")[i]);
            assertThat(point.survival()).isCloseTo(expected.column("survival")[i], within(1e-12));
            double stdErr = expected.column("std_err")[i];
            if (Double.isNaN(stdErr)) {
                assertThat(point.stdErr()).isNaN();
            } else {
                assertThat(point.stdErr()).isCloseTo(stdErr, within(1e-11));
            }
        }
    }

    /** An entry at the age of a failure is not at risk for it. Values printed in a test of the library lifelines. */
    @Test
    void entryAtTheAgeOfAFailureComesTooLateForIt() {
        boolean[] events = {true, true, true, true, true};
        KaplanMeier curve = KaplanMeier.of(
                LifeRecords.of(new double[] {1, 2, 4, 0, 0}, new double[] {2, 10, 5, 4, 3}, events, null));
        assertThat(curve.points()).extracting(KaplanMeier.Point::age).containsExactly(2.0, 3.0, 4.0, 5.0, 10.0);
        assertThat(curve.points()).extracting(KaplanMeier.Point::atRisk).containsExactly(3L, 3L, 2L, 2L, 1L);
        double[] survival = {2 / 3.0, 4 / 9.0, 2 / 9.0, 1 / 9.0, 0};
        for (int i = 0; i < survival.length; i++) {
            assertThat(curve.points().get(i).survival()).isCloseTo(survival[i], within(1e-12));
        }
    }

    /**
     * Six rows by hand: exits 2 (failed), 3 (alive), 4 (failed, failed), 5 (alive), 6 (failed). At 2: 5/6. At 4: four at
     * risk, two fail, 5/6 x 2/4 = 5/12; Greenwood sum 1/(6x5) + 2/(4x2) = 17/60. At 6: one at risk, 0.
     */
    @Test
    void sixRowsByHand() {
        KaplanMeier curve = KaplanMeier.of(
                LifeRecords.of(new double[] {2, 3, 4, 4, 5, 6}, new boolean[] {true, false, true, true, false, true}));
        assertThat(curve.survival(1.9)).isEqualTo(1);
        assertThat(curve.survival(3.9)).isCloseTo(5 / 6.0, within(1e-15));
        assertThat(curve.survival(4)).isCloseTo(5 / 12.0, within(1e-15));
        assertThat(curve.points().get(2).stdErr()).isCloseTo(5 / 12.0 * Math.sqrt(17 / 60.0), within(1e-15));
        assertThat(curve.survival(7)).isEqualTo(0);
    }

    @Test
    void withoutSuspensionsItIsOneMinusTheEmpiricalDistribution() {
        long seed = 20260106;
        SplittableRandom random = new SplittableRandom(seed);
        double[] exits = random.doubles(500, 1, 1e6).map(Math::rint).toArray();
        boolean[] events = new boolean[exits.length];
        Arrays.fill(events, true);
        KaplanMeier curve = KaplanMeier.of(LifeRecords.of(exits, events));
        for (double age : exits) {
            double beyond = Arrays.stream(exits).filter(exit -> exit > age).count() / (double) exits.length;
            assertThat(curve.survival(age)).as("seed %d, age %s", seed, age).isCloseTo(beyond, within(1e-12));
        }
    }

    @Test
    void countsStandForRepeatedRows() {
        KaplanMeier counted = KaplanMeier.of(LifeRecords.of(
                new double[] {0, 1, 0}, new double[] {3, 5, 5}, new boolean[] {true, false, true}, new long[] {2, 3, 1
                }));
        KaplanMeier repeated = KaplanMeier.of(LifeRecords.of(
                new double[] {0, 0, 1, 1, 1, 0},
                new double[] {3, 3, 5, 5, 5, 5},
                new boolean[] {true, true, false, false, false, true},
                null));
        assertThat(counted).isEqualTo(repeated);
    }
}
