package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A part that a visit needs.
 *
 * @param family engine family
 * @param per counted by cylinder, by bank touched, by visit, by access step done, or by scheduled service done
 * @param step the access step where {@code per} is STEP, else null
 * @param part part number
 * @param quantity how many, above 0
 * @param chance chance that it is needed, 0 to 1: below 1 for parts that break when handled
 * @param task the scheduled service where {@code per} is TASK, else null
 */
public record JobPart(
        String family,
        Per per,
        @Nullable String step,
        String part,
        double quantity,
        double chance,
        @Nullable String task) {
    public JobPart {
        family = Require.name("family", family);
        step = Require.optionalName("step", step);
        task = Require.optionalName("task", task);
        part = Require.name("part", part);
        named("step", step, per, Per.STEP, "name the access step");
        named("task", task, per, Per.TASK, "name the scheduled service");
        Require.positive("quantity", quantity);
        Require.within("quantity", quantity, 0, 100_000);
        Require.within("chance", chance, 0, 1);
    }

    /** A part that no scheduled service needs. */
    public JobPart(String family, Per per, @Nullable String step, String part, double quantity, double chance) {
        this(family, per, step, part, quantity, chance, null);
    }

    private static void named(String column, @Nullable String name, Per per, Per wanted, String fix) {
        if (per == wanted && name == null) {
            throw new InvalidValueException(column, "", "is empty though per is " + column, fix);
        }
        if (per != wanted && name != null) {
            throw new InvalidValueException(
                    column,
                    name,
                    "is given though per is " + per.name().toLowerCase(Locale.ROOT),
                    "clear it, or set per to " + column);
        }
    }
}
