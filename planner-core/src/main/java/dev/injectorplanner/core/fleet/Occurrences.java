package dev.injectorplanner.core.fleet;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How often faults came. An ECU counts a code's occurrences on and on: what counts of reports is how often a code was seen or
 * how far its counter rose, whichever is more, never the sum of both. The rise starts at the last report before; the first
 * report of all counts once, since nobody knows when its counter began; a counter that falls was cleared; a report without a counter
 * is one report and leaves the counter as it was. Episodes hold their own rise, and count as that.
 */
public final class Occurrences {
    private final Map<String, Integer> before = new TreeMap<>();
    private final Map<String, Tally> codes = new TreeMap<>();

    private static final class Tally {
        private long reports;
        private long rise;
        private long episodes;
        private @Nullable Integer counter;

        long occurrences() {
            return Math.max(reports, rise) + episodes;
        }
    }

    /** Takes a fault that does not count itself, but after which those to come are counted. Oldest first. */
    public void before(Fault fault) {
        if (!fault.isEpisode()) {
            before.put(fault.code().text(), fault.count());
        }
    }

    /** Counts a fault. Oldest first. */
    public void add(Fault fault) {
        String code = fault.code().text();
        Tally tally = codes.get(code);
        if (tally == null) {
            tally = new Tally();
            tally.counter = before.get(code);
            codes.put(code, tally);
        }
        if (fault.isUncounted()) {
            tally.reports++;
            return;
        }
        if (fault.isEpisode()) {
            tally.episodes += fault.count();
            return;
        }
        tally.reports++;
        Integer last = tally.counter;
        if (last != null) {
            tally.rise += fault.count() < last ? fault.count() : fault.count() - last;
        }
        tally.counter = fault.count();
    }

    /** Of all codes together. */
    public long total() {
        return codes.values().stream().mapToLong(Tally::occurrences).sum();
    }

    /** The codes that were counted, in the order of their text. */
    public Set<String> codes() {
        return codes.keySet();
    }
}
