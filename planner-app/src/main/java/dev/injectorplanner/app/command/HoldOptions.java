package dev.injectorplanner.app.command;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Holds;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Pins and refusals to try out: nothing of them is stored. */
final class HoldOptions {
    private static final String NEVER = "never";

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--pin",
            paramLabel = "TRUCK=WEEK",
            description = "Fixes a truck's visit to a week, such as T005=2026-W12.")
    private Map<String, String> pins = Map.of();

    @Option(
            names = "--refuse",
            paramLabel = "TRUCK=WEEK",
            description = "Keeps a truck out of a week, or out of all: T005=never.")
    private Map<String, String> refusals = Map.of();

    boolean any() {
        return !pins.isEmpty() || !refusals.isEmpty();
    }

    Holds holds() {
        Map<String, IsoWeek> pinned = new HashMap<>();
        pins.forEach((truck, week) -> pinned.put(truck, week("--pin", truck, week)));
        Map<String, Set<IsoWeek>> refused = new HashMap<>();
        refusals.forEach((truck, week) -> {
            Set<IsoWeek> weeks = refused.computeIfAbsent(truck, each -> new TreeSet<>());
            if (!week.equals(NEVER)) {
                weeks.add(week("--refuse", truck, week));
            }
        });
        return new Holds(pinned, refused, Map.of());
    }

    private IsoWeek week(String option, String truck, String week) {
        try {
            return IsoWeek.parse(week);
        } catch (InvalidValueException e) {
            throw new ParameterException(
                    spec.commandLine(), option + " " + truck + "=" + week + ": " + e.getMessage(), e);
        }
    }
}
