package dev.injectorplanner.app.site;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.units.SiteUnits;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Something a site may set.
 *
 * @param name its name on the command line
 * @param area what it belongs to
 * @param title its label
 * @param meaning what it means, in words
 * @param measure what it is counted in
 * @param least the smallest figure, as kept
 * @param most the largest figure, as kept
 * @param choices what may be chosen, in words; empty where nothing is chosen from
 * @param standard the planner's default, as kept
 * @param effect what it does to a policy
 */
public record SettingKind(
        String name,
        SettingArea area,
        String title,
        String meaning,
        Measure measure,
        double least,
        double most,
        List<String> choices,
        String standard,
        Effect effect) {
    /** The choice that stands for yes. */
    static final String YES = "yes";

    /** The default of a figure that is not set at all. */
    static final String NONE = "";

    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,6})?");
    private static final int MOST_TEXT = 60;

    public SettingKind {
        choices = List.copyOf(choices);
    }

    /** What a kept value does to a policy. */
    @FunctionalInterface
    public interface Effect {
        Policy on(Policy policy, String kept);
    }

    /** What may be entered, in words and the site's units. */
    public String range(SiteUnits units) {
        if (!choices.isEmpty()) {
            return String.join(" or ", choices);
        }
        if (measure == Measure.TEXT) {
            return "up to " + MOST_TEXT + " characters";
        }
        return Measure.thousands(measure.shown(least, units)) + " to " + measure.words(most, units);
    }

    /** The unit in which it is typed; empty for words. */
    public String unit(SiteUnits units) {
        return measure.unit(units);
    }

    /** A kept value as it is typed. */
    public String shown(String kept, SiteUnits units) {
        return measure.isFigure() && !kept.isEmpty() ? measure.shown(Double.parseDouble(kept), units) : kept;
    }

    /** The planner's default in words. */
    public String standardWords(SiteUnits units) {
        if (standard.isEmpty()) {
            return "none";
        }
        return words(standard, units);
    }

    /** A kept value as people read it, with its unit. */
    public String words(String kept, SiteUnits units) {
        return measure.isFigure() ? measure.words(Double.parseDouble(kept), units) : kept;
    }

    /**
     * What was typed, as it is kept.
     *
     * @throws InvalidValueException where it is not what the setting takes, or a plan could not be made with it
     */
    String kept(String typed, SiteUnits units) {
        String text = typed.strip();
        String kept = !choices.isEmpty()
                ? choice(text)
                : measure == Measure.TEXT ? words(text) : Require.plain(figure(text, units));
        effect.on(Policy.standard(), kept);
        return kept;
    }

    private String choice(String text) {
        return choices.stream()
                .filter(choice -> choice.equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        name, text, "is not one of the choices", "choose " + range(SiteUnits.METRIC)));
    }

    private String words(String text) {
        if (text.isEmpty() || text.length() > MOST_TEXT || text.chars().anyMatch(Character::isISOControl)) {
            throw new InvalidValueException(
                    name, text, "must have 1 to " + MOST_TEXT + " characters on one line", "enter a shorter text");
        }
        return text;
    }

    private double figure(String text, SiteUnits units) {
        String fix = "enter " + (measure.isWhole() ? "a whole number" : "a number") + " from " + range(units);
        if (!NUMBER.matcher(text).matches()) {
            throw new InvalidValueException(name, text, "is not a number", fix + ", such as " + example(units));
        }
        BigDecimal typed = new BigDecimal(text);
        if (measure.isWhole() && typed.stripTrailingZeros().scale() > 0) {
            throw new InvalidValueException(name, text, "is not a whole number", fix);
        }
        if (typed.compareTo(new BigDecimal(measure.shown(least, units))) < 0
                || typed.compareTo(new BigDecimal(measure.shown(most, units))) > 0) {
            throw new InvalidValueException(name, text, "is out of range", fix);
        }
        double kept = measure.kept(typed, units);
        return Math.min(most, Math.max(least, kept)); // limits are shown rounded in other units
    }

    private String example(SiteUnits units) {
        return String.format(Locale.ROOT, "%s", shown(standard.isEmpty() ? Require.plain(least) : standard, units));
    }

    /** The name under which the store keeps it: that of the first version. */
    String storedName() {
        return name.equals(SettingKinds.RESCHEDULING_COST) ? SettingKinds.NUISANCE : name;
    }
}
