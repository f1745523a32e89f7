package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.imports.j1939.TroubleCode;

/** One fault of one ECU while a log goes on: the episode that is open, and what its counter showed last. */
final class FaultTrack {
    private static final int UNKNOWN = -1;

    /** The counter stays here once it is reached; 127 says that nothing is counted (SAE J1939-73), and so does a 0 that stays. */
    private static final int HIGHEST_COUNT = 126;

    private int counter = UNKNOWN;
    private boolean open;
    private long first;
    private long last;
    private long reports;
    private int rise;
    private int activations;
    private boolean counted;
    private long message;

    boolean isOpen() {
        return open;
    }

    long first() {
        return first;
    }

    long last() {
        return last;
    }

    long reports() {
        return reports;
    }

    /** How often the fault came in the open episode. */
    int count() {
        return Math.max(1, counted ? rise : activations);
    }

    boolean isApart(long micros, long gap) {
        return open && (micros - last > gap || last - micros > gap);
    }

    /** A report that the fault is active. {@code number} counts the messages of its ECU. */
    void active(long micros, long number, TroubleCode code) {
        if (!open) {
            begin(micros);
            counted = true;
        }
        if (reports == 0 || number != message + 1) {
            activations++;
        }
        message = number;
        reports++;
        last = Math.max(last, micros);
        count(code, true);
    }

    /**
     * A report that it was active before. Only a rise of its counter since an earlier report says that it came again
     * meanwhile; without one it says nothing of when.
     */
    void previous(long micros, TroubleCode code) {
        boolean risen = counter != UNKNOWN && code.hasCount() && code.count() > counter;
        if (risen && !open) {
            begin(micros);
            counted = true;
        }
        if (open && risen) {
            reports++;
            last = Math.max(last, micros);
        }
        count(code, risen);
    }

    private void begin(long micros) {
        open = true;
        first = micros;
        last = micros;
        reports = 0;
        rise = 0;
        activations = 0;
    }

    private void count(TroubleCode code, boolean inEpisode) {
        boolean stuck = code.count() == HIGHEST_COUNT && counter == HIGHEST_COUNT;
        if (!code.hasCount() || code.count() == 0 || stuck) {
            counted = false;
            return;
        }
        int count = code.count();
        if (inEpisode) {
            rise += counter == UNKNOWN ? Math.min(1, count) : count < counter ? count : count - counter;
        }
        counter = count;
    }

    void close() {
        open = false;
    }
}
