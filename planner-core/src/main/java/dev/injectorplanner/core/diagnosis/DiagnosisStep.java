package dev.injectorplanner.core.diagnosis;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.RepairWork;
import org.jspecify.annotations.Nullable;

/**
 * One place to look.
 *
 * @param key names it in records, lower case with dashes; never changed once used
 * @param title what is looked at, in a few words
 * @param how how it is looked at; figures and limits are the engine maker's
 * @param repair the work that a fault found here usually asks for, or null where it is another
 */
public record DiagnosisStep(
        String key, String title, String how, @Nullable RepairWork repair) {
    public DiagnosisStep {
        Require.name("key", key);
        Require.text("title", title);
        Require.text("how", how);
    }
}
