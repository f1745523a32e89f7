package dev.injectorplanner.app.command;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Policy;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** For which day, how far ahead, and for whom a plan is made. */
final class PlanOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "The day to plan for, such as 2026-03-02 (default: today).")
    private @Nullable LocalDate on;

    @Option(
            names = "--weeks",
            paramLabel = "N",
            description = "Weeks ahead, 1 to 104 (default: the site's setting, else 26).")
    private @Nullable Integer weeks;

    @Option(names = "--depot", paramLabel = "D", description = "One depot (default: all).")
    private @Nullable String depot;

    LocalDate today() {
        return on == null ? LocalDate.now() : on;
    }

    /**
     * How to plan.
     *
     * @param site how the site plans where nothing else is asked for
     */
    Policy policy(Policy site) {
        try {
            return weeks == null ? site : site.withWeeks(weeks);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), "--" + e.getMessage(), e);
        }
    }

    /** Whether what was asked for can be, before a store is opened. */
    void check() {
        policy(Policy.standard());
    }

    @Nullable
    String depot() {
        return depot;
    }
}
