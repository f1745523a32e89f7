package dev.injectorplanner.core.life;

/** A life distribution: the age at which a new unit fails, in whatever one unit the ages are in (km or hours). */
public interface LifeModel {

    /** Chance of surviving beyond {@code age}, 0..1. */
    double survival(double age);

    /** Failures per unit of age among those still alive at {@code age}; may be infinite. */
    double hazard(double age);

    /** Integral of the hazard from 0 to {@code age}. */
    default double cumulativeHazard(double age) {
        return -Math.log(survival(age));
    }

    /** Integral of the hazard from {@code age} to {@code age + next}. */
    default double cumulativeHazard(double age, double next) {
        return cumulativeHazard(age + next) - cumulativeHazard(age);
    }

    /** Mean age at failure without any replacement. */
    double meanLife();

    /** Mean age reached by units that are taken out at {@code age} at the latest: the integral of survival from 0. */
    double meanLifeWithin(double age);

    /** An age that practically no unit outlives: searches stop here. */
    double longestLife();
}
