package dev.injectorplanner.app.command;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.schedule.ExtraCapacity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Hours and bays to try out: nothing of them is stored. */
final class CapacityOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--add-hours",
            paramLabel = "DEPOT=WEEK:HOURS",
            description = "Previews extra labour hours in a depot's week, such as Norrvik=2026-W12:16.")
    private List<String> hours = List.of();

    @Option(
            names = "--add-bays",
            paramLabel = "DEPOT=WEEK:BAYS",
            description = "Previews extra bays in a depot's week, such as Norrvik=2026-W12:1.")
    private List<String> bays = List.of();

    boolean any() {
        return !hours.isEmpty() || !bays.isEmpty();
    }

    List<ExtraCapacity> extra() {
        List<ExtraCapacity> extra = new ArrayList<>();
        for (String row : hours) {
            extra.add(row(
                    "--add-hours",
                    row,
                    (place, number) -> new ExtraCapacity(place.depot, place.week, Double.parseDouble(number), 0)));
        }
        for (String row : bays) {
            extra.add(row(
                    "--add-bays",
                    row,
                    (place, number) -> new ExtraCapacity(place.depot, place.week, 0, Integer.parseInt(number))));
        }
        return extra;
    }

    private record Place(String depot, IsoWeek week) {}

    private ExtraCapacity row(String option, String given, BiFunction<Place, String, ExtraCapacity> make) {
        int equals = given.lastIndexOf('=');
        int colon = given.lastIndexOf(':');
        if (equals <= 0 || colon < equals + 2 || colon == given.length() - 1) {
            throw wrong(
                    option + " " + given + ": is not a depot, week and number. Fix: write it as Norrvik=2026-W12:16.");
        }
        try {
            IsoWeek week = IsoWeek.parse(given.substring(equals + 1, colon));
            return make.apply(new Place(given.substring(0, equals), week), given.substring(colon + 1));
        } catch (InvalidValueException e) {
            throw wrong(option + " " + given + ": " + e.getMessage());
        } catch (NumberFormatException e) {
            throw wrong(option + " " + given + ": \"" + given.substring(colon + 1)
                    + "\" is not a number it could add. Fix: write hours as 16 or 7.5, bays as a whole number.");
        }
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
