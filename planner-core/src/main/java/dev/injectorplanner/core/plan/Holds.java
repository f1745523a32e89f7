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
 *     it must not wait
 * @param refusals truck and the weeks refused; an empty set refuses every week
 * @param announced truck and the week its visit was announced for
 */
public record Holds(Map<String, IsoWeek> pins, Map<String, Set<IsoWeek>> refusals, Map<String, IsoWeek> announced) {
    public Holds {
        pins = Collections.unmodifiableMap(new TreeMap<>(pins));
        refusals = Collections.unmodifiableMap(new TreeMap<>(refusals));
        announced = Collections.unmodifiableMap(new TreeMap<>(announced));
    }

    /** Nothing held. */
    public static Holds none() {
        return new Holds(Map.of(), Map.of(), Map.of());
    }

    /** Whether a truck may come in that week. */
    boolean allows(String truck, IsoWeek week) {
        Set<IsoWeek> refused = refusals.get(truck);
        return refused == null || !refused.isEmpty() && !refused.contains(week);
    }

    /** Whether a truck is pinned to a week after a plan's last one: it waits for a later plan, unless it must not wait. */
    boolean isPinnedAfter(String truck, IsoWeek lastWeek) {
        IsoWeek pin = pins.get(truck);
        return pin != null && pin.compareTo(lastWeek) > 0;
    }
}
