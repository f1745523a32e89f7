package dev.injectorplanner.reports.replay;

import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.Locale;
import java.util.Optional;

/** What a calibration says, in sentences. */
public final class CalibrationWords {
    private final CalibrationResult result;
    private final SiteUnits units;

    public CalibrationWords(CalibrationResult result, SiteUnits units) {
        this.result = result;
        this.units = units;
    }

    /** What was played. */
    public String about() {
        String words = result.words();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ": " + result.fleets() + " fleets of "
                + result.trucks() + " trucks to search on and as many fresh ones to confirm, " + result.weeks()
                + " weeks of planning and two more years under one rule.";
    }

    /** What was chosen and what it gains, and whether a simple rule is cheaper. */
    public String answer() {
        Optional<PolicyResult> found = result.policies().stream()
                .filter(each -> each.policy().equals(CalibrationResult.FOUND))
                .findFirst();
        if (found.isEmpty()) {
            return "";
        }
        return gain(found.get()) + rule();
    }

    private String gain(PolicyResult found) {
        if (result.found().equals(result.before())) {
            return "Nothing that was tried is cheaper: the figures stay as they are.";
        }
        String by = amount(Math.abs(found.difference())) + " per 1,000 " + units.distanceUnit() + " (95 % interval "
                + signed(found.low()) + " to " + signed(found.high()) + ")";
        if (result.chosen().equals(result.found())) {
            return "The figures found save " + by + " on the fresh fleets and are chosen.";
        }
        return found.difference() < 0
                ? "The figures found save " + by
                        + " on the fresh fleets, too little to be sure: the figures stay as they are."
                : "The figures found cost " + by + " more on the fresh fleets: the figures stay as they are.";
    }

    private String rule() {
        if (!result.isRuleCheaper()) {
            return " No simple rule is cheaper than the planner here.";
        }
        PolicyResult rule = result.bestRule().orElseThrow();
        double less = result.planner().orElseThrow().costPer1000Km() - rule.costPer1000Km();
        return " A simple rule, " + rule.policy() + ", is still " + amount(less) + " cheaper here"
                + (rule.high() < 0 ? "" : ", which so few fleets can show by chance") + ": "
                + units.sentence(rule.settings()) + ".";
    }

    private String amount(double per1000Km) {
        return String.format(Locale.ROOT, "%,.1f", per1000Km / units.ofKm(1));
    }

    private String signed(double per1000Km) {
        return String.format(Locale.ROOT, "%+.1f", per1000Km / units.ofKm(1));
    }

    /** {@code 140 %}. */
    public static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
