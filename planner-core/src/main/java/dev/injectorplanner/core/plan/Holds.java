package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The manager's hold on a plan.
 *
 * @param pins truck and the week its visit is fixed to; a week after the plan's last keeps the truck out of the plan, unless
 *     safety needs it sooner
 * @param blocked truck and the weeks it is kept out of; an empty set blocks every week
 * @param confirmed truck and the week that the shop was told for its visit
 */
public record Holds(Map<String, IsoWeek> pins, Map<String, Set<IsoWeek>> blocked, Map<String, IsoWeek> confirmed) {
    public Holds {
        pins = Collections.unmodifiableMap(new TreeMap<>(pins));
        blocked = Collections.unmodifiableMap(new TreeMap<>(blocked));
        confirmed = Collections.unmodifiableMap(new TreeMap<>(confirmed));
    }

    /** Nothing held. */
    public static Holds none() {
        return new Holds(Map.of(), Map.of(), Map.of());
    }

    /** Whether a truck may come in that week. */
    boolean allows(String truck, IsoWeek week) {
        Set<IsoWeek> refused = blocked.get(truck);
        return refused == null || !refused.isEmpty() && !refused.contains(week);
    }

    /** Whether a truck is pinned to a week after a plan's last one: it waits for a later plan, unless safety needs it sooner. */
    boolean isPinnedAfter(String truck, IsoWeek lastWeek) {
        IsoWeek pin = pins.get(truck);
        return pin != null && pin.compareTo(lastWeek) > 0;
    }

    /** {@link #blocked} under its earlier name. */
    public Map<String, Set<IsoWeek>> refusals() {
        return blocked;
    }

    /** {@link #confirmed} under its earlier name. */
    public Map<String, IsoWeek> announced() {
        return confirmed;
    }
}
