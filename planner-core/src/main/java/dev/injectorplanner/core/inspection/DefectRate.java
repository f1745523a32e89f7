package dev.injectorplanner.core.inspection;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.LifeModel;

/** How many defects arise per unit of age (km or hours), as a function of age or of the distance since a test. */
@FunctionalInterface
public interface DefectRate {

    /** Defects per unit of age at {@code age}, zero or more. */
    double at(double age);

    /**
     * This rate begun {@code later}: none before, then counted from there. For an injector that was fitted some distance
     * after its truck's last test.
     */
    default DefectRate startingAt(double later) {
        Require.notNegative("start", later);
        return age -> age < later ? 0 : at(age - later);
    }

    /** The same rate at every age. */
    static DefectRate constant(double rate) {
        Require.notNegative("defect rate", rate);
        return age -> rate;
    }

    /**
     * Rate for one injector in service from the life at whose end it fails when nobody tests it: a defect that arises
     * now would fail about one mean delay later, so it arises at the hazard the life has then. This is our reading of
     * how life and delay hang together, exact for a constant hazard.
     *
     * @param hazardMultiplier condition of the unit in service, above 0; 1 for none
     */
    static DefectRate ofLife(LifeModel life, double hazardMultiplier, Delay delay) {
        Require.positive("hazard multiplier", hazardMultiplier);
        double shift = Double.isFinite(delay.mean()) ? delay.mean() : 0;
        return age -> hazardMultiplier * life.hazard(age + shift);
    }

    /**
     * Long-run rate for a whole engine: {@code cylinders} injectors, each failing or replaced at {@code replacedAt} at
     * the latest (infinity for never): cylinders x F / integral of S (renewal reward theorem).
     */
    static DefectRate longRun(LifeModel life, int cylinders, double replacedAt) {
        Require.within("cylinders", cylinders, 1, 64);
        double each = replacedAt == Double.POSITIVE_INFINITY
                ? 1 / life.meanLife()
                : (1 - life.survival(replacedAt)) / life.meanLifeWithin(replacedAt);
        return constant(cylinders * each);
    }
}
