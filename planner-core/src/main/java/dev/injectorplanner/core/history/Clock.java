package dev.injectorplanner.core.history;

import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.usage.MeterUsage;
import dev.injectorplanner.core.usage.TruckUsage;
import org.jspecify.annotations.Nullable;

/** What an injector's age is counted in. */
public enum Clock {
    /** Km since fitting. */
    DISTANCE("km"),
    /** Engine hours since fitting. */
    HOURS("engine hours");

    private final String unit;

    Clock(String unit) {
        this.unit = unit;
    }

    /** Unit in words. */
    public String unit() {
        return unit;
    }

    /** Age on this clock today, or null where it is not known. */
    public @Nullable Double of(InjectorAge age) {
        return this == DISTANCE ? age.km() : age.hours();
    }

    /** The meter that drives this clock. */
    public MeterUsage of(TruckUsage usage) {
        return this == DISTANCE ? usage.odometer() : usage.engineHours();
    }
}
