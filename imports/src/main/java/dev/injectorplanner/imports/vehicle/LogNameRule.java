package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.LogSource;
import dev.injectorplanner.core.fleet.Truck;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * How the file name of a vehicle log tells its truck.
 *
 * @param pattern {@code {truck}} or {@code {vin}} stands for the truck, {@code *} for anything; a {@code *} right behind the
 *     truck does not go on with a letter or digit, so that T10 is not found in T101.log
 */
public record LogNameRule(String pattern) {
    /** The name begins with the truck (planner default). */
    public static final String STANDARD = "{truck}*";

    private static final String TRUCK = "{truck}";
    private static final String VIN = "{vin}";

    public LogNameRule {
        boolean truck = pattern.contains(TRUCK);
        if (truck == pattern.contains(VIN)) {
            throw new InvalidValueException(
                    "log-names", pattern, "must hold either {truck} or {vin}", "write it as {truck}_*.log");
        }
    }

    /** The trucks that a file name may mean: one, none, or several. A longer name goes before one that it begins with. */
    public List<Truck> trucks(String fileName, Collection<Truck> all) {
        List<Truck> found = new ArrayList<>();
        for (Truck truck : all) {
            String name = pattern.contains(TRUCK) ? truck.truck() : truck.vinText();
            if (fits(fileName, name)) {
                found.add(truck);
            }
        }
        int longest =
                found.stream().mapToInt(truck -> truck.truck().length()).max().orElse(0);
        found.removeIf(truck -> pattern.contains(TRUCK) && truck.truck().length() < longest);
        return found;
    }

    private boolean fits(String fileName, String name) {
        if (name.isEmpty() || name.indexOf('*') >= 0) {
            return false;
        }
        String place = pattern.contains(TRUCK) ? TRUCK : VIN;
        String before = pattern.substring(0, pattern.indexOf(place));
        String after = pattern.substring(pattern.indexOf(place) + place.length());
        String lower = fileName.toLowerCase(Locale.ROOT);
        String wanted = name.toLowerCase(Locale.ROOT);
        for (int at = lower.indexOf(wanted); at >= 0; at = lower.indexOf(wanted, at + 1)) {
            int end = at + wanted.length();
            boolean goesOn =
                    after.startsWith("*") && end < lower.length() && Character.isLetterOrDigit(lower.charAt(end));
            boolean cameOn = before.endsWith("*") && at > 0 && Character.isLetterOrDigit(lower.charAt(at - 1));
            if (!goesOn && !cameOn && matches(before, lower.substring(0, at)) && matches(after, lower.substring(end))) {
                return true;
            }
        }
        return false;
    }

    private static boolean matches(String pattern, String text) {
        return pattern.isEmpty() ? text.isEmpty() : LogSource.matches(pattern.toLowerCase(Locale.ROOT), text);
    }
}
