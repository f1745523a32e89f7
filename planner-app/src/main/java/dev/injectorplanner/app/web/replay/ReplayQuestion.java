package dev.injectorplanner.app.web.replay;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import java.util.List;

/**
 * What is to be replayed.
 *
 * @param scenario name of a made-up truth, or {@link #OWN} for the fleet's own tables and learned lives
 * @param depots depots of the own fleet; empty for a made-up one
 * @param plans numbers of their plans; empty for a made-up one
 * @param fleets fleets, one of {@link #FLEETS}
 * @param years years of planning, one of {@link #YEARS}
 */
public record ReplayQuestion(String scenario, List<String> depots, List<Long> plans, int fleets, int years) {
    static final String OWN = "own";
    static final List<Integer> FLEETS = List.of(2, 4, 8);
    static final List<Integer> YEARS = List.of(1, 2, 3, 5);

    public ReplayQuestion {
        depots = List.copyOf(depots);
        plans = List.copyOf(plans);
        require("fleets", fleets, FLEETS);
        require("years", years, YEARS);
        List<String> known = Scenarios.list().stream().map(Scenario::name).toList();
        if (!scenario.equals(OWN) && !known.contains(scenario)) {
            throw new InvalidValueException("scenario", scenario, "is not known", "choose one of " + known);
        }
    }

    private static void require(String field, int value, List<Integer> choices) {
        if (!choices.contains(value)) {
            throw new InvalidValueException(field, value, "is not one of the choices", "choose one of " + choices);
        }
    }

    /** Whether the fleet itself is played, not a made-up one. */
    public boolean isOwn() {
        return scenario.equals(OWN);
    }
}
