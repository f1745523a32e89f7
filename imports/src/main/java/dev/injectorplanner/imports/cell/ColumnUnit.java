package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.units.Units;
import java.util.List;

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

    /** In the unit that is kept: km or litres. */
    public double toKept(double value) {
        return value * factor;
    }
}
