package dev.injectorplanner.core.inspection;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.WeibullLife;

/** How long a defect lasts before it fails, in the unit of the ages (km or hours). */
public interface Delay {

    /** Chance that a defect has failed within {@code distance} of arising; 0 for a negative distance. */
    double chanceWithin(double distance);

    /**
     * Chance that a defect fails later than {@code from} and within {@code to} of arising. Exact also where both lie far out:
     * a difference of two chances near 1 would be rounding noise.
     *
     * @param from zero or more
     * @param to at least {@code from}
     */
    double chanceBetween(double from, double to);

    /** Mean delay; infinite if defects need not fail. */
    double mean();

    /** A delay that practically no defect outlasts; infinite if defects need not fail. */
    double longest();

    /** Exponential delay. */
    static Delay exponential(double mean) {
        return new Delays.Exponential(Require.positive("mean delay", mean));
    }

    /** Any delay from 0 to {@code longest} equally likely. */
    static Delay uniform(double longest) {
        return new Delays.Uniform(Require.positive("longest delay", longest));
    }

    /** Weibull delay: with a shape above 1, few defects fail at once. */
    static Delay weibull(double shape, double scale) {
        return new Delays.Weibull(new WeibullLife(shape, scale));
    }

    /** A defect fails at once: no test can find it. */
    static Delay none() {
        return new Delays.None();
    }

    /** A defect never fails. */
    static Delay endless() {
        return new Delays.Endless();
    }
}
