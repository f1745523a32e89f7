package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.fleet.TestKind;
import java.util.List;

/**
 * What one injector showed, week by week from the day after it came under observation: days with faults of its cylinder, spells
 * of circuit faults, rail pressure faults of its engine, and tests against their limits.
 */
public final class SignTrack {
    /** Days with faults beyond this many a week count as this many. */
    public static final int MOST_FAULT_DAYS = 2;

    private final byte[] faultDays;
    private final boolean[] circuit;
    private final boolean[] rail;
    private final List<Seen> tests;

    SignTrack(byte[] faultDays, boolean[] circuit, boolean[] rail, List<Seen> tests) {
        this.faultDays = faultDays;
        this.circuit = circuit;
        this.rail = rail;
        this.tests = List.copyOf(tests);
    }

    /**
     * A test.
     *
     * @param week its week on the track
     * @param kind balance or return flow
     * @param ratio its value, without its sign, over its limit; above 1 is over the limit
     */
    public record Seen(int week, TestKind kind, double ratio) {}

    /** Weeks on the track; the last may be cut short. */
    public int weeks() {
        return faultDays.length;
    }

    /** Days with faults of the cylinder, those of its circuit apart, in a week, 0 to {@link #MOST_FAULT_DAYS}. */
    public int faultDays(int week) {
        return faultDays[week];
    }

    /**
     * Whether a spell of circuit faults began in a week: an intermittent contact reports again and again, and its second day says
     * no more of the injector than its first.
     */
    public boolean circuit(int week) {
        return circuit[week];
    }

    /** Whether the engine had a fuel pressure, leak or water fault in a week. */
    public boolean rail(int week) {
        return rail[week];
    }

    /** Tests that can be held against a limit, oldest first. */
    public List<Seen> tests() {
        return tests;
    }
}
