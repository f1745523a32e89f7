package dev.injectorplanner.app.testkit;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until a test moves it. */
public final class MovedClock extends Clock {
    private Instant now;

    public MovedClock(Instant now) {
        this.now = now;
    }

    public void move(Duration ahead) {
        now = now.plus(ahead);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("UTC only");
    }
}
