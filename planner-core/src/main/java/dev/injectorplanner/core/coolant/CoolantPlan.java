package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;

/**
 * Everything the storeman needs of a plan for coolant.
 *
 * @param rules how the site handles it
 * @param needs by visit
 * @param weeks by depot and week
 */
public record CoolantPlan(CoolantRules rules, List<CoolantNeed> needs, List<CoolantWeek> weeks) {
    public CoolantPlan {
        needs = List.copyOf(needs);
        weeks = List.copyOf(weeks);
    }

    /** Works out what to pour and collect at planned visits. */
    public static CoolantPlan of(FleetIndex index, List<Visit> visits, CoolantRules rules) {
        List<CoolantNeed> needs = CoolantNeeds.of(index, visits, rules);
        return new CoolantPlan(rules, needs, CoolantWeek.of(needs, rules));
    }
}
