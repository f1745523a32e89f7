package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.plan.RecordsState;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The depots a page shows.
 *
 * @param seen depots that this person sees, by name
 * @param bound the one depot that this person may see, or null for all there are
 * @param depot the one depot chosen, or null for all of them
 * @param plans of the depots shown that have a plan in force
 * @param withoutPlan depots shown that have none
 */
public record ChosenDepots(
        List<String> seen,
        @Nullable String bound,
        @Nullable String depot,
        List<DepotPlan> plans,
        List<String> withoutPlan) {
    public ChosenDepots {
        seen = List.copyOf(seen);
        plans = List.copyOf(plans);
        withoutPlan = List.copyOf(withoutPlan);
    }

    /** For the address of a page: the depot, or empty for all. */
    public String depotOrAll() {
        return depot == null ? "" : depot;
    }

    /** The one depot that may be spoken of: chosen, or the only one that this person sees; null for all there are. */
    public @Nullable String only() {
        return depot != null ? depot : bound;
    }

    /** Whether a plan shown covers depots besides the one that is spoken of. */
    public boolean anyPlanOfOthers() {
        return only() != null && plans.stream().anyMatch(plan -> plan.kept().depot() == null);
    }

    /** The units in which people of the site read. */
    public SiteUnits units() {
        return plans.isEmpty() ? SiteUnits.METRIC : plans.get(0).units();
    }

    /** Whether there is something to show. */
    public boolean anyPlan() {
        return !plans.isEmpty();
    }

    /** What the records behind the plans shown lack, a sentence each; it stands wherever chances and counts do. */
    public List<String> recordsLack() {
        return RecordsState.together(plans.stream().map(DepotPlan::records).toList()).sentences().stream()
                .map(units()::sentence)
                .toList();
    }

    /** For which day and when the plans shown were made, in words. */
    public String made() {
        Set<Long> told = new HashSet<>();
        return plans.stream()
                .filter(plan -> told.add(plan.kept().id()))
                .map(plan -> "Plan of " + DisplayFormat.date(plan.today()) + ", made "
                        + DisplayFormat.moment(plan.kept().keptAt(), plan.site().timeZone())
                        + (plan.kept().depot() == null ? "" : " (" + plan.depot() + ")"))
                .reduce((one, other) -> one + "; " + other)
                .orElse("No plan yet");
    }
}
