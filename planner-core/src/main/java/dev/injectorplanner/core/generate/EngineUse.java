package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.check.Require;

/**
 * An engine family as the generator uses it.
 *
 * @param family its name
 * @param share share of the fleet's trucks, above 0; shares are weighed against each other
 * @param duty what its trucks do, for the names of duty groups
 * @param kmPerWeek usual km a week
 * @param kmPerHour mean speed over engine hours, idling counted
 * @param plannedKm km since fitting at which the workshop has replaced injectors so far
 * @param lettered whether its faults are written P0263 and so on (SAE J2012) rather than as SPN and FMI (SAE J1939)
 */
public record EngineUse(
        String family,
        double share,
        String duty,
        double kmPerWeek,
        double kmPerHour,
        double plannedKm,
        boolean lettered) {
    public EngineUse {
        Require.positive("share", share);
        Require.positive("km_per_week", kmPerWeek);
        Require.positive("km_per_hour", kmPerHour);
        Require.positive("planned_km", plannedKm);
    }
}
