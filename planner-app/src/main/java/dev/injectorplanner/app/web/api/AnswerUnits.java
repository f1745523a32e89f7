package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The units of an answer: km and litres unless a request asks for the site's. */
final class AnswerUnits {
    private static final double THOUSANDTHS = 1_000;

    private AnswerUnits() {}

    /**
     * What parameter {@code units} asks for.
     *
     * @throws ApiRefusal where it is neither metric nor site
     */
    static SiteForm of(@Nullable String asked, SiteSettings settings) {
        if (asked == null || asked.equals("metric")) {
            return SiteForm.STANDARD;
        }
        if (asked.equals("site")) {
            return settings.form();
        }
        throw new ApiRefusal(
                400,
                "The request cannot be read",
                "units is neither metric nor site. Fix: send one of them.",
                List.of());
    }

    /** A distance under its name with the unit: {@code odometer_km}, {@code odometer_mi}. */
    static void distance(Map<String, Object> fields, String name, @Nullable Object km, SiteForm form) {
        boolean miles = form.units().distance() == SiteUnits.Distance.MILES;
        fields.put(
                name + (miles ? "_mi" : "_km"), figure(km, miles ? form.units().ofKm(1) : 1));
    }

    /** A volume under its name with the unit: {@code drained_litres}, {@code drained_us_gal}. */
    static void volume(Map<String, Object> fields, String name, double litres, SiteForm form) {
        boolean gallons = form.units().volume() == SiteUnits.Volume.US_GALLONS;
        fields.put(
                name + (gallons ? "_us_gal" : "_litres"),
                figure(litres, gallons ? form.units().ofLitres(1) : 1));
    }

    private static @Nullable Object figure(@Nullable Object value, double factor) {
        return factor == 1 || !(value instanceof Number number)
                ? value
                : Math.rint(number.doubleValue() * factor * THOUSANDTHS) / THOUSANDTHS;
    }
}
