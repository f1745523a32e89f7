package dev.injectorplanner.app.demo;

import dev.injectorplanner.core.generate.DemoFleet;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalTime;
import java.time.ZoneOffset;

/** The day the demo's fleet was made for. */
public final class DemoDay {
    /** When its plan was made: the night before the day's work, as the nightly job would have. */
    public static final Instant PLANNED_AT = at(LocalTime.of(1, 0));

    private static final Instant MORNING = at(LocalTime.of(7, 0));

    private DemoDay() {}

    private static Instant at(LocalTime time) {
        return DemoFleet.TODAY.atTime(time).toInstant(ZoneOffset.UTC);
    }

    /** A clock that shows the morning of that day now, and goes on from there. */
    public static InstantSource clock() {
        return Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), MORNING));
    }
}
