package dev.injectorplanner.core.usage;

import dev.injectorplanner.core.units.Figures;
import java.time.Instant;

/**
 * A reading left out of the usage.
 *
 * @param truck the truck
 * @param takenAt the moment, UTC
 * @param meter which meter
 * @param value what it showed, km or hours
 * @param verdict why it is left out
 */
public record MeterFlag(String truck, Instant takenAt, Meter meter, double value, MeterVerdict verdict) {
    /** The flag in words. */
    public String words() {
        String shown = meter.words() + " " + Figures.whole(value) + " " + meter.unit();
        return "truck " + truck + ", " + takenAt + ": " + shown + " " + reason();
    }

    private String reason() {
        return switch (verdict) {
            case ROLL_BACK -> "is below an earlier reading; set meter_replaced if the meter was replaced";
            case IMPLAUSIBLE -> "does not fit the readings before and after";
            case MILES_FOR_KM -> "looks like miles entered as kilometres";
            default -> "is good";
        };
    }
}
