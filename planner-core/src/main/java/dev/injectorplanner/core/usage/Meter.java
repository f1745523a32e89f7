package dev.injectorplanner.core.usage;

import dev.injectorplanner.core.fleet.Reading;
import org.jspecify.annotations.Nullable;

/** Which meter of a truck. */
public enum Meter {
    ODOMETER("odometer", "km"),
    ENGINE_HOURS("engine hours", "h");

    private final String words;
    private final String unit;

    Meter(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    public String words() {
        return words;
    }

    public String unit() {
        return unit;
    }

    @Nullable
    Double of(Reading reading) {
        return this == ODOMETER ? reading.odometerKm() : reading.engineHours();
    }

    MeterVerdict judge(double previous, double current, double days, boolean replaced) {
        return this == ODOMETER
                ? MeterRules.odometer(previous, current, days, replaced)
                : MeterRules.engineHours(previous, current, days, replaced);
    }
}
