package dev.injectorplanner.app.command;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Holds;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Pins and blocked weeks to preview: none of them is stored. */
final class HoldOptions {
    private static final String NEVER = "never";

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--pin",
            paramLabel = "TRUCK=WEEK",
            description = "Pins a truck's visit to a week, such as T005=2026-W12.")
    private List<String> pins = List.of();

    @Option(
            names = {"--block", "--refuse"},
            paramLabel = "TRUCK=WEEK",
            description = "Blocks a week for a truck, or every week: T005=never.")
    private List<String> blocked = List.of();

    boolean any() {
        return !pins.isEmpty() || !blocked.isEmpty();
    }

    Holds holds() {
        Map<String, IsoWeek> pinned = new HashMap<>();
        for (String pin : pins) {
            String[] parts = parts("--pin", pin);
            if (pinned.put(parts[0], week("--pin", pin, parts[1])) != null) {
                throw wrong("--pin " + pin + ": truck " + parts[0] + " is pinned twice. Fix: pin it once.");
            }
        }
        Map<String, Set<IsoWeek>> blockedWeeks = new HashMap<>();
        Set<String> never = new HashSet<>();
        for (String block : blocked) {
            String[] parts = parts("--block", block);
            Set<IsoWeek> weeks = blockedWeeks.computeIfAbsent(parts[0], truck -> new TreeSet<>());
            if (parts[1].equals(NEVER)) {
                never.add(parts[0]);
            } else {
                weeks.add(week("--block", block, parts[1]));
            }
        }
        never.forEach(truck -> blockedWeeks.put(truck, Set.of()));
        return new Holds(pinned, blockedWeeks, Map.of());
    }

    private String[] parts(String option, String given) {
        int equals = given.lastIndexOf('=');
        if (equals <= 0 || equals == given.length() - 1) {
            throw wrong(option + " " + given + ": is not a truck and week. Fix: write it as T005=2026-W12.");
        }
        return new String[] {given.substring(0, equals), given.substring(equals + 1)};
    }

    private IsoWeek week(String option, String given, String week) {
        try {
            return IsoWeek.parse(week);
        } catch (InvalidValueException e) {
            throw wrong(option + " " + given + ": " + e.getMessage());
        }
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
