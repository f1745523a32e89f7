package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.units.Units;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A unit that a heading may name at its end. */
public enum ColumnUnit {
    KM("km", 1, "kilometres kilometers kms"),
    MILES("mi", Units.KM_PER_MILE, "miles mile"),
    LITRES("l", 1, "litres liters litre liter"),
    US_GALLONS("gal", Units.LITRES_PER_US_GALLON, "gallons usgal usgallons");

    /** Distance: the first one is how it is kept. */
    public static final List<ColumnUnit> DISTANCE = List.of(KM, MILES);

    /** Volume: the first one is how it is kept. */
    public static final List<ColumnUnit> VOLUME = List.of(LITRES, US_GALLONS);

    private static final Pattern BEHIND_NUMBER = Pattern.compile(".*[0-9][.,]?\\s*([a-z]+)\\.?");

    private final String suffix;
    private final double factor;
    private final String otherNames;

    ColumnUnit(String suffix, double factor, String otherNames) {
        this.suffix = suffix;
        this.factor = factor;
        this.otherNames = otherNames;
    }

    /** How the canonical heading ends: km in odometer_km. */
    public String suffix() {
        return suffix;
    }

    /** Whether a heading's end, without separators and in small letters, names this unit. */
    public boolean isNamed(String end) {
        return end.equals(suffix) || List.of(otherNames.split(" ", -1)).contains(end);
    }

    /** The unit whose name stands behind a number: KM for {@code 482,100 km}; null where there is none. */
    public static @Nullable ColumnUnit behind(String cell) {
        Matcher end = BEHIND_NUMBER.matcher(cell.toLowerCase(Locale.ROOT));
        if (end.matches()) {
            for (ColumnUnit unit : values()) {
                if (unit.isNamed(end.group(1))) {
                    return unit;
                }
            }
        }
        return null;
    }

    /** @throws InvalidValueException if a cell names another unit than its column */
    public static void refuseOther(String column, String cell, @Nullable ColumnUnit unit) {
        ColumnUnit named = behind(cell);
        if (named != null && named != unit) {
            throw new InvalidValueException(
                    column,
                    cell,
                    unit == null
                            ? "is in " + named.suffix() + ", the column is not"
                            : "is in " + named.suffix() + ", the column in " + unit.suffix(),
                    "write it in the unit of the column, without the unit's name");
        }
    }

    /** In the unit that is kept: km or litres. */
    public double toKept(double value) {
        return value * factor;
    }
}
