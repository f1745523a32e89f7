package dev.injectorplanner.app.web.results;

import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.Locale;

/** A rule of the site in words, in its units. */
final class RuleWords {
    private RuleWords() {}

    static String of(Rule rule, SiteUnits units) {
        String family = rule.family() == null ? "" : " for " + rule.family();
        String limit = Figures.tenths(rule.limit());
        return switch (rule.rule()) {
            case AGE_MONTHS -> "the limit of " + limit + " months" + family;
            case DISTANCE_KM -> "the limit of " + units.distance(rule.limit()) + family;
            case ENGINE_HOURS -> "the limit of " + Figures.whole(rule.limit()) + " engine hours" + family;
            case FAULTS -> "the limit of " + limit + " faults" + family;
            case RISK -> "the limit of " + limit + " % chance of failing in 12 weeks" + family;
            case BALANCE -> "the balance limit of " + limit + " mm3 a stroke" + family;
            case RETURN_FLOW -> "the return flow limit of " + limit + " ml a minute" + family;
            case WARRANTY -> "the test within " + limit + " days before a warranty ends" + family;
            case SAFETY -> rule.rule().name().toLowerCase(Locale.ROOT);
        };
    }
}
