package dev.injectorplanner.app.planning;

import dev.injectorplanner.core.plan.Holds;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Holds that are stored, with those that are tried on top of them. */
final class CombinedHolds {
    private CombinedHolds() {}

    /** A truck that is tried is held as tried: its stored pins and blocked weeks step back. */
    static Holds of(Holds stored, Holds tried) {
        Set<String> trucks = new TreeSet<>(tried.pins().keySet());
        trucks.addAll(tried.blocked().keySet());
        trucks.addAll(tried.days().keySet());
        return new Holds(
                over(stored.pins(), tried.pins(), trucks),
                over(stored.blocked(), tried.blocked(), trucks),
                over(stored.confirmed(), tried.confirmed(), Set.of()),
                over(stored.days(), tried.days(), trucks),
                over(stored.heldOff(), tried.heldOff(), Set.of()));
    }

    private static <V> Map<String, V> over(Map<String, V> stored, Map<String, V> tried, Set<String> trucks) {
        Map<String, V> all = new TreeMap<>(stored);
        all.keySet().removeAll(trucks);
        all.putAll(tried);
        return all;
    }
}
