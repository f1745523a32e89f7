package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.Origin;
import java.time.LocalDate;

/**
 * The truth about one injector that the tables do not tell.
 *
 * @param truck the truck
 * @param cylinder its cylinder
 * @param part part number
 * @param origin new or reman
 * @param fittedOn day it went in
 * @param fittedKm true km of the truck then
 * @param lifeKm km since fitting at which it fails if left in
 * @param defectKm km since fitting from which faults and tests can show it
 * @param endKm km since fitting at which it came out, or that it has today
 * @param end how it ended
 */
public record InjectorTruth(
        String truck,
        int cylinder,
        String part,
        Origin origin,
        LocalDate fittedOn,
        double fittedKm,
        double lifeKm,
        double defectKm,
        double endKm,
        End end) {
    /** How a fitted injector ended. */
    public enum End {
        /** Failed in service. */
        FAILED,
        /** Its defect was found and it was replaced before it failed. */
        FOUND,
        /** Replaced at the workshop's planned distance. */
        PLANNED,
        /** Replaced because the engine was open for another. */
        ALONGSIDE,
        /** Still in. */
        RUNNING
    }
}
