package dev.injectorplanner.core.replay.scenario;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.List;

/**
 * How engines of a family are truly used and wear.
 *
 * @param family its name in the site's tables
 * @param share share of the fleet's trucks, weighed against the other families
 * @param kmPerWeek usual km a week
 * @param kmPerHour mean speed over engine hours, idling counted
 * @param practiceKm age of the oldest injector at which the shop has replaced the whole set so far, km
 * @param lives ways in which its injectors end
 * @param remanShare share of replacements that are reman units, 0 to 1
 * @param remanLife life of a reman unit against a new one, such as 0.8
 */
public record FamilyTruth(
        String family,
        double share,
        double kmPerWeek,
        double kmPerHour,
        double practiceKm,
        List<LifeComponent> lives,
        double remanShare,
        double remanLife) {
    public FamilyTruth {
        family = Require.name("family", family);
        Require.positive("share", share);
        Require.positive("km_per_week", kmPerWeek);
        Require.positive("km_per_hour", kmPerHour);
        Require.positive("practice_km", practiceKm);
        lives = List.copyOf(lives);
        if (lives.isEmpty()) {
            throw new InvalidValueException("lives", family, "has no life", "name at least one component");
        }
        Require.within("reman_share", remanShare, 0, 1);
        Require.positive("reman_life", remanLife);
    }

    /** The same with one life for all. */
    public FamilyTruth withLife(LifeComponent other) {
        return withLives(other);
    }

    FamilyTruth withLives(LifeComponent... other) {
        return new FamilyTruth(family, share, kmPerWeek, kmPerHour, practiceKm, List.of(other), remanShare, remanLife);
    }

    FamilyTruth withReman(double otherShare, double life) {
        return new FamilyTruth(family, share, kmPerWeek, kmPerHour, practiceKm, lives, otherShare, life);
    }
}
