package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class A10_MeanCumulativeFunctionTest {

    private static RepeatHistory unit(String name, double end, double... events) {
        return new RepeatHistory(name, end, events);
    }

    /**
     * Three units by hand: A fails at 5 and 8, ends 12; B fails at 5, ends 9; C ends at 7 with no failure. At 5: 2/3. At
     * 8: C is gone, 2/3 + 1/2 = 7/6. Robust variance (Lawless and Nadeau 1995) at 5: units give (1 - 2/3)/3 = 1/9, 1/9,
     * -2/9, squares 6/81. At 8: A 1/9 + (1 - 1/2)/2 = 13/36, B 1/9 - 1/4 = -5/36, C -8/36: (169 + 25 + 64) / 1296.
     */
    @Test
    void threeUnitsByHand() {
        List<MeanCumulativeFunction.Point> points = MeanCumulativeFunction.of(
                        List.of(unit("A", 12, 8, 5), unit("B", 9, 5), unit("C", 7)))
                .points();
        assertThat(points).hasSize(2);
        assertThat(points.get(0).atRisk()).isEqualTo(3);
        assertThat(points.get(0).events()).isEqualTo(2);
        assertThat(points.get(0).mean()).isCloseTo(2 / 3.0, within(1e-15));
        assertThat(points.get(0).stdErr()).isCloseTo(Math.sqrt(6 / 81.0), within(1e-15));
        assertThat(points.get(1).atRisk()).isEqualTo(2);
        assertThat(points.get(1).mean()).isCloseTo(7 / 6.0, within(1e-15));
        assertThat(points.get(1).stdErr()).isCloseTo(Math.sqrt(258 / 1296.0), within(1e-15));
    }

    /** The carried sums against the definition, term by term. */
    @Test
    void agreesWithTheDefinitionOnRandomFleets() {
        long seed = 4711;
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 30; round++) {
            List<RepeatHistory> fleet = new ArrayList<>();
            for (int i = 0; i < random.nextInt(2, 25); i++) {
                double end = random.nextInt(20, 200);
                double[] events = random.doubles(random.nextInt(0, 6), 1, end)
                        .map(Math::rint)
                        .toArray();
                fleet.add(unit("T" + i, end, events));
            }
            for (MeanCumulativeFunction.Point point :
                    MeanCumulativeFunction.of(fleet).points()) {
                assertThat(point.stdErr())
                        .as("seed %d round %d", seed, round)
                        .isCloseTo(byDefinition(fleet, point.age()), within(1e-12));
            }
        }
    }

    private static double byDefinition(List<RepeatHistory> fleet, double until) {
        double variance = 0;
        for (RepeatHistory unit : fleet) {
            double sum = 0;
            for (double age = 1; age <= until; age++) {
                if (unit.endAge() < age) {
                    continue;
                }
                double at = age;
                double watched =
                        fleet.stream().filter(other -> other.endAge() >= at).count();
                double all = fleet.stream().mapToLong(other -> count(other, at)).sum();
                sum += (count(unit, age) - all / watched) / watched;
            }
            variance += sum * sum;
        }
        return Math.sqrt(variance);
    }

    private static long count(RepeatHistory unit, double age) {
        long count = 0;
        for (double event : unit.eventAges()) {
            count += event == age ? 1 : 0;
        }
        return count;
    }

    @Test
    void oneUnitHasNoSpreadToJudgeBy() {
        List<MeanCumulativeFunction.Point> points =
                MeanCumulativeFunction.of(List.of(unit("A", 10, 2, 4))).points();
        assertThat(points.get(1).mean()).isEqualTo(2);
        assertThat(points.get(1).stdErr()).isNaN();
    }

    @Test
    void refusesAnEventBeyondTheEnd() {
        assertThatThrownBy(() -> unit("A", 10, 11))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("not beyond the unit's end at 10");
    }
}
