package dev.injectorplanner.core.option;

import dev.injectorplanner.core.access.AccessModel;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Every set of cylinders of one family with its hours, shared access labour and drain: 255 sets of eight cylinders, 65,535 of sixteen,
 * worked out once a family and then looked up. A set is a bit mask: bit 0 is cylinder 1. All sets are evaluated, none is
 * guessed; with sixteen cylinders a week's evaluation is one pass over 65,535 sums.
 */
public final class CylinderSets {
    private final int cylinders;
    private final AccessModel access;
    private final double[] labourHours;
    private final double[] accessHours;
    private final double[] drainedLitres;

    public CylinderSets(EngineFamily family, List<AccessStep> steps) {
        this.cylinders = family.cylinders();
        this.access = new AccessModel(family, steps);
        int sets = 1 << cylinders;
        this.labourHours = new double[sets];
        this.accessHours = new double[sets];
        this.drainedLitres = new double[sets];
        fill(family, steps);
    }

    /** A step serves a set if it serves one of its cylinders. */
    private void fill(EngineFamily family, List<AccessStep> steps) {
        for (AccessStep step : steps) {
            int served =
                    maskOf(family.allCylinders().stream().filter(step::serves).toList());
            double litres = family.coolantLitres() * step.drainsCoolantPercent() / 100;
            for (int set = 1; set < labourHours.length; set++) {
                if ((set & served) != 0) {
                    accessHours[set] += step.hours();
                    drainedLitres[set] = Math.max(drainedLitres[set], litres);
                }
            }
        }
        for (int set = 1; set < labourHours.length; set++) {
            labourHours[set] = accessHours[set] + Integer.bitCount(set) * family.cylinderHours();
        }
    }

    /** How many sets there are, the empty one included. */
    public int count() {
        return labourHours.length;
    }

    /** Cylinders of the engine. */
    public int cylinders() {
        return cylinders;
    }

    /** Labour of a set: its access steps and each cylinder's own, hours. */
    public double labourHours(int set) {
        return labourHours[set];
    }

    /** Labour of the access steps alone, hours. */
    public double accessHours(int set) {
        return accessHours[set];
    }

    /** Coolant that comes out, litres. */
    public double drainedLitres(int set) {
        return drainedLitres[set];
    }

    /** What the shared access of a set costs: labour of the union of steps, coolant, the bay; nothing for the empty set. */
    public double sharedCost(int set, Rates rates) {
        return set == 0
                ? 0
                : accessHours[set] * rates.labourPerHour()
                        + drainedLitres[set] * rates.coolantPerLitre()
                        + rates.bayPerVisit();
    }

    /** A cylinder's share of the full set's shared access: what it bears in a typical visit, before plans give a better figure. */
    public double fullSetShare(Rates rates) {
        return sharedCost(count() - 1, rates) / cylinders;
    }

    /** Access steps of a set by name, in order of taking off. */
    public List<String> steps(int set) {
        return access.stepsFor(cylindersOf(set)).stream().map(AccessStep::step).toList();
    }

    /** Cylinders of a set, ascending. */
    public static List<Integer> cylindersOf(int set) {
        List<Integer> list = new ArrayList<>(Integer.bitCount(set));
        for (int rest = set; rest != 0; rest &= rest - 1) {
            list.add(Integer.numberOfTrailingZeros(rest) + 1);
        }
        return list;
    }

    /** The set of some cylinders. */
    public static int maskOf(Collection<Integer> cylinders) {
        int set = 0;
        for (int cylinder : cylinders) {
            set |= 1 << (cylinder - 1);
        }
        return set;
    }
}
