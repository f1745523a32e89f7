package dev.injectorplanner.app.store;

import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * How long an opening waits for a lock that another process holds, or left behind. Counted by the clock, since one try
 * of the embedded database itself lasts some ten seconds: so long a killed process's lock counts as held.
 */
final class LockWait {
    /** Pause between two tries, in milliseconds. */
    static final long PAUSE_MILLIS = 500;

    private static final long MOST_NANOS = TimeUnit.SECONDS.toNanos(30);

    private final LongSupplier nanos;
    private final long begun;
    private long tryBegun;
    private int tries;

    private LockWait(LongSupplier nanos) {
        this.nanos = nanos;
        begun = nanos.getAsLong();
        tryBegun = begun;
    }

    /**
     * Begins with the first try.
     *
     * @param nanos a clock in nanoseconds, such as {@code System::nanoTime}
     */
    static LockWait begin(LongSupplier nanos) {
        return new LockWait(nanos);
    }

    /**
     * Asked after a try that failed: whether at least half of another as long as that one fits in. A second there
     * always is.
     */
    boolean hasTimeForAnother() {
        long now = nanos.getAsLong();
        long last = now - tryBegun;
        tryBegun = now;
        tries++;
        return tries == 1 || now - begun + last / 2 <= MOST_NANOS;
    }

    /** Waits before the next try; false where this process is told to stop meanwhile. */
    static boolean pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Seconds until the wait is over, >= 0. */
    long secondsLeft() {
        return Math.max(0, TimeUnit.NANOSECONDS.toSeconds(MOST_NANOS - (nanos.getAsLong() - begun)));
    }
}
