package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.truth.Draws;
import java.time.LocalDate;

/** One injector while its story is being made up. */
final class Unit {
    final int cylinder;
    final String part;
    final Origin origin;
    final LocalDate fittedOn;
    final double fittedKm;
    final double lifeKm;
    final double defectKm;
    /** Km since fitting at which its defect is found by the workshop; beyond its life where it is not. */
    final double foundKm;

    final double plannedKm;
    final boolean factory;
    InjectorTruth.End end = InjectorTruth.End.RUNNING;
    LocalDate removedOn = LocalDate.MAX;
    double endKm;

    Unit(
            Draws draws,
            int cylinder,
            TrueLife life,
            LocalDate fittedOn,
            double fittedKm,
            double plannedKm,
            boolean factory) {
        this.cylinder = cylinder;
        this.part = life.part();
        this.origin = life.origin();
        this.fittedOn = fittedOn;
        this.fittedKm = fittedKm;
        this.factory = factory;
        lifeKm = draws.weibull(life.shape(), life.scaleKm());
        double delayKm = Math.min(lifeKm, 2_000 + draws.exponential(Symptoms.MEAN_DELAY_KM));
        defectKm = lifeKm - delayKm;
        foundKm = draws.chance(Symptoms.FOUND_IN_TIME)
                ? defectKm + draws.between(0.3, 0.95) * delayKm
                : Double.POSITIVE_INFINITY;
        this.plannedKm = plannedKm * draws.between(0.92, 1.35);
    }

    /** Km since fitting at which it comes out by itself. */
    double outKm() {
        return Math.min(lifeKm, Math.min(foundKm, plannedKm));
    }

    InjectorTruth.End reason() {
        double out = outKm();
        return out == lifeKm
                ? InjectorTruth.End.FAILED
                : out == foundKm ? InjectorTruth.End.FOUND : InjectorTruth.End.PLANNED;
    }

    InjectorTruth truth(String truck) {
        return new InjectorTruth(truck, cylinder, part, origin, fittedOn, fittedKm, lifeKm, defectKm, endKm, end);
    }
}
