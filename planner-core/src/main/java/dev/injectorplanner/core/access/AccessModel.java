package dev.injectorplanner.core.access;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import java.util.Collection;
import java.util.List;

/**
 * What it takes to reach cylinders of one family. Steps of a set of cylinders are the union of the steps of each; a set
 * never costs more than its parts apart.
 *
 * <p>By hand: a V8 with batteries and covers (0.5 h, all), intake (2.5 h, all, drains 40 %), cab mounts (3 h, cylinders
 * 7 and 8, drains 60 %) and 0.4 h a cylinder. Cylinder 1 alone: 0.5 + 2.5 + 0.4 = 3.4 h; cylinder 8 alone: 6.4 h;
 * both: 0.5 + 2.5 + 3 + 2 x 0.4 = 6.8 h, not 9.8 h. Of 50 l both drain 30 l, the larger of 20 l and 30 l.
 */
public final class AccessModel {
    private final EngineFamily family;
    private final List<AccessStep> steps;

    /** @param steps of this family, in order of taking off */
    public AccessModel(EngineFamily family, List<AccessStep> steps) {
        this.family = family;
        this.steps = List.copyOf(steps);
    }

    /** The union of the access steps of cylinders, in order of taking off; none for no cylinder. */
    public List<AccessStep> stepsFor(Collection<Integer> cylinders) {
        return steps.stream()
                .filter(step -> cylinders.stream().anyMatch(step::serves))
                .toList();
    }

    /** Labour of the access steps of cylinders together, hours. */
    public double accessHours(Collection<Integer> cylinders) {
        return stepsFor(cylinders).stream().mapToDouble(AccessStep::hours).sum();
    }

    /** Labour of a set of cylinders: its access steps and each cylinder's own, hours. Order and repeats do not matter. */
    public double labourHours(Collection<Integer> cylinders) {
        return accessHours(cylinders) + cylinders.stream().distinct().count() * family.cylinderHours();
    }

    /** Coolant that comes out: the largest drain of the access steps, litres. */
    public double drainedLitres(Collection<Integer> cylinders) {
        double percent = stepsFor(cylinders).stream()
                .mapToDouble(AccessStep::drainsCoolantPercent)
                .max()
                .orElse(0);
        return family.coolantLitres() * percent / 100;
    }
}
