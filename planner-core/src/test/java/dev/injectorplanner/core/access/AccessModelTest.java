package dev.injectorplanner.core.access;

import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * By hand: covers 0.5 h (all), intake 2.5 h (all, drains 40 % of 50 l), cab mounts 3 h (cylinders 7 and 8, drains 60 %),
 * 0.4 h a cylinder.
 * <pre>
 *   {1}         0.5 + 2.5     + 1 x 0.4 = 3.4 h   40 % = 20 l
 *   {8}         0.5 + 2.5 + 3 + 1 x 0.4 = 6.4 h   60 % = 30 l
 *   {1, 8}      0.5 + 2.5 + 3 + 2 x 0.4 = 6.8 h   60 % = 30 l, not 50 l
 *   {1 to 8}    0.5 + 2.5 + 3 + 8 x 0.4 = 9.2 h   30 l
 * </pre>
 */
class AccessModelTest {
    private static final double ROUNDING = 1e-9;
    private final FleetBuilder fleet = new FleetBuilder();
    private final AccessModel model = new AccessModel(FleetBuilder.v8(), fleet.access);

    @Test
    void workedByHand() {
        assertThat(model.labourHours(List.of(1))).isCloseTo(3.4, within(ROUNDING));
        assertThat(model.labourHours(List.of(8))).isCloseTo(6.4, within(ROUNDING));
        assertThat(model.labourHours(List.of(1, 8))).isCloseTo(6.8, within(ROUNDING));
        assertThat(model.labourHours(List.of(1, 2, 3, 4, 5, 6, 7, 8))).isCloseTo(9.2, within(ROUNDING));
        assertThat(model.accessHours(List.of(1, 8))).isCloseTo(6, within(ROUNDING));
        assertThat(model.drainedLitres(List.of(1))).isCloseTo(20, within(ROUNDING));
        assertThat(model.drainedLitres(List.of(1, 8))).isCloseTo(30, within(ROUNDING));
        assertThat(model.stepsFor(List.of(8, 1)))
                .extracting(AccessStep::step)
                .containsExactly("covers off", "intake off", "cab mounts down");
    }

    @Test
    void noCylinderNeedsNothing() {
        assertThat(model.labourHours(List.of())).isZero();
        assertThat(model.drainedLitres(List.of())).isZero();
        assertThat(model.stepsFor(List.of())).isEmpty();
    }

    @Test
    void laws() {
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            AccessModel random8 = new AccessModel(FleetBuilder.v8(), randomSteps(random));
            Set<Integer> one = randomSet(random);
            Set<Integer> other = randomSet(random);
            Set<Integer> union = new TreeSet<>(one);
            union.addAll(other);
            Set<Integer> common = new TreeSet<>(one);
            common.retainAll(other);
            double both = random8.labourHours(union);
            double apart = random8.labourHours(one) + random8.labourHours(other);
            assertThat(both)
                    .as("more cylinders never take less, seed %d", seed)
                    .isGreaterThanOrEqualTo(random8.labourHours(one) - ROUNDING);
            assertThat(both + random8.labourHours(common))
                    .as("submodular, seed %d", seed)
                    .isLessThanOrEqualTo(apart + ROUNDING);
            assertThat(both).as("no dearer than apart, seed %d", seed).isLessThanOrEqualTo(apart + ROUNDING);
            assertThat(random8.drainedLitres(union))
                    .as("largest drain, seed %d", seed)
                    .isEqualTo(Math.max(random8.drainedLitres(one), random8.drainedLitres(other)));
            List<Integer> mixed = new ArrayList<>(union);
            mixed.addAll(one);
            Collections.shuffle(mixed, random);
            assertThat(random8.labourHours(mixed))
                    .as("order and repeats, seed %d", seed)
                    .isEqualTo(both);
        }
    }

    private static List<AccessStep> randomSteps(Random random) {
        return IntStream.rangeClosed(1, 1 + random.nextInt(7))
                .mapToObj(order -> new AccessStep(
                        V8,
                        "step " + order,
                        order,
                        random.nextDouble() * 3,
                        random.nextBoolean() ? List.of() : List.copyOf(randomSet(random)),
                        random.nextInt(100),
                        ""))
                .toList();
    }

    private static Set<Integer> randomSet(Random random) {
        Set<Integer> set = new TreeSet<>();
        random.ints(1 + random.nextInt(6), 1, 9).forEach(set::add);
        return set;
    }
}
