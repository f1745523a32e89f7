package dev.injectorplanner.app.jobs;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** A clock that stands until it is moved. */
final class MovableClock implements InstantSource {
    private volatile Instant now;

    MovableClock(Instant now) {
        this.now = now;
    }

    void move(Duration by) {
        now = now.plus(by);
    }

    @Override
    public Instant instant() {
        return now;
    }
}
