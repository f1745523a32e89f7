package dev.injectorplanner.core.replay.world;

import dev.injectorplanner.core.fleet.Origin;

/**
 * One injector as it truly is. Ages are km of wear since it was new.
 *
 * @param origin new or reman
 * @param lifeKm age at which it fails if left in
 * @param defectKm age from which its defect can be seen; its life where it fails without a sign
 * @param faultsKm ages at which its defect stores a fault, ascending
 * @param roadFactor what its failure costs against the usual road failure
 */
public record TrueUnit(Origin origin, double lifeKm, double defectKm, double[] faultsKm, double roadFactor) {
    /** How far a defect has gone at an age: 0 before and when it begins, 1 at the failure. */
    double progress(double ageKm) {
        return lifeKm <= defectKm ? 0 : Math.max(0, Math.min(1, (ageKm - defectKm) / (lifeKm - defectKm)));
    }
}
