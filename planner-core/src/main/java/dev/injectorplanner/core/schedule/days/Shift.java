package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.Duration;
import java.time.LocalTime;

/**
 * When a depot works on a day, and how fast work goes in a bay.
 *
 * @param opens first minute of the shift
 * @param closes end of the shift, on the same day
 * @param labourPerBayHour labour hours done in one bay in one hour: the technicians who can work on one truck at a time
 */
public record Shift(LocalTime opens, LocalTime closes, double labourPerBayHour) {
    public Shift {
        if (!opens.isBefore(closes)) {
            throw new InvalidValueException(
                    "closes",
                    closes,
                    "is not after " + opens + " of the same day",
                    "give a shift that ends before midnight");
        }
        Require.positive("labour_per_bay_hour", labourPerBayHour);
    }

    int opensMinute() {
        return opens.toSecondOfDay() / 60;
    }

    int closesMinute() {
        return opensMinute() + (int) Duration.between(opens, closes).toMinutes();
    }
}
