package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.visit.Visit;

/** What it costs to move a visit to a later week, in the site's currency. */
@FunctionalInterface
public interface PostponementCost {
    /** @return 0 or more */
    double of(Visit visit, IsoWeek to);

    /** The same for every week and visit, until deferral costs are at hand. */
    static PostponementCost perWeek(OrderRules rules) {
        return (visit, to) ->
                rules.postponementPerWeek().doubleValue() * visit.week().weeksUntil(to);
    }
}
