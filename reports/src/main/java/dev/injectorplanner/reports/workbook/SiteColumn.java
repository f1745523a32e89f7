package dev.injectorplanner.reports.workbook;

import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A column as the site reads it. Its heading names the unit that its values come in; heading, values and what formulas showed
 * last are turned together, so that a formula over cells of one unit stays right.
 *
 * @param title the heading in the site's unit
 * @param format how its cells are written
 * @param figures turns a figure
 * @param form turns sentences
 */
record SiteColumn(String title, Format format, DoubleUnaryOperator figures, SiteForm form) {
    static SiteColumn of(String title, Format format, SiteForm form) {
        SiteUnits units = form.units();
        if (names(title, "l") && units.volume() != SiteUnits.Volume.LITRES) {
            return new SiteColumn(renamed(title, "l", units.volumeUnit()), format, units::ofLitres, form);
        }
        if (title.equals("Litres") && units.volume() != SiteUnits.Volume.LITRES) {
            return new SiteColumn("US gallons", format, units::ofLitres, form);
        }
        if (names(title, "km") && units.distance() != SiteUnits.Distance.KM) {
            return new SiteColumn(renamed(title, "km", units.distanceUnit()), format, units::ofKm, form);
        }
        if (names(title, "C") && units.temperature() != SiteUnits.Temperature.CELSIUS) {
            return new SiteColumn(renamed(title, "C", units.temperatureUnit()), format, units::ofCelsius, form);
        }
        return new SiteColumn(title, format, DoubleUnaryOperator.identity(), form);
    }

    /** {@code Drained, l} and {@code Coolant, l, low}, not {@code Kg a litre}. */
    private static boolean names(String title, String unit) {
        return title.endsWith(", " + unit) || title.contains(", " + unit + ", ");
    }

    private static String renamed(String title, String unit, String site) {
        return title.replaceFirst(", " + unit + "(?=, |$)", ", " + site);
    }

    /** A value as it goes into a cell. */
    @Nullable
    Object value(@Nullable Object value) {
        if (value instanceof Formula formula) {
            return new Formula(formula.text(), figures.applyAsDouble(formula.value()));
        }
        if (value instanceof Number number) {
            return figures.applyAsDouble(number.doubleValue());
        }
        return value instanceof String text && format == Format.WRAPPED ? form.sentence(text) : value;
    }
}
