package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A part that a visit needs.
 *
 * @param family engine family
 * @param per counted by cylinder, by bank touched, by visit, or by access step done
 * @param step the access step where {@code per} is STEP, else null
 * @param part part number
 * @param quantity how many, above 0
 * @param chance chance that it is needed, 0 to 1: below 1 for parts that break when handled
 */
public record JobPart(String family, Per per, @Nullable String step, String part, double quantity, double chance) {
    public JobPart {
        family = Require.name("family", family);
        step = Require.optionalName("step", step);
        part = Require.name("part", part);
        if (per == Per.STEP && step == null) {
            throw new InvalidValueException("step", "", "is empty though per is step", "name the access step");
        }
        if (per != Per.STEP && step != null) {
            throw new InvalidValueException(
                    "step",
                    step,
                    "is given though per is " + per.name().toLowerCase(Locale.ROOT),
                    "clear it, or set per to step");
        }
        Require.positive("quantity", quantity);
        Require.within("quantity", quantity, 0, 100_000);
        Require.within("chance", chance, 0, 1);
    }
}
