package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.schedule.days.DayPin;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The manager's hold on a plan.
 *
 * @param pins truck and the week its visit is fixed to; a week after the plan's last keeps the truck out of the plan
 * @param blocked truck and the weeks it is kept out of; an empty set blocks every week
 * @param confirmed truck and the week that the shop was told for its visit
 * @param days truck and the day, bay and start that the foreman fixed its visit to; it goes before a pin to a week
 * @param heldOff trucks whose diagnosis is held off, with who answers for it
 */
public record Holds(
        Map<String, IsoWeek> pins,
        Map<String, Set<IsoWeek>> blocked,
        Map<String, IsoWeek> confirmed,
        Map<String, DayPin> days,
        Map<String, HeldOff> heldOff) {
    public Holds {
        days = Collections.unmodifiableMap(new TreeMap<>(days));
        heldOff = Collections.unmodifiableMap(new TreeMap<>(heldOff));
        pins = Collections.unmodifiableMap(new TreeMap<>(pins));
        blocked = Collections.unmodifiableMap(new TreeMap<>(blocked));
        confirmed = Collections.unmodifiableMap(new TreeMap<>(confirmed));
    }

    /** Weeks alone: no visit is fixed to a day, and no diagnosis held off. */
    public Holds(Map<String, IsoWeek> pins, Map<String, Set<IsoWeek>> blocked, Map<String, IsoWeek> confirmed) {
        this(pins, blocked, confirmed, Map.of(), Map.of());
    }

    /** The same with visits fixed to days. */
    public Holds withDays(Map<String, DayPin> other) {
        return new Holds(pins, blocked, confirmed, other, heldOff);
    }

    /** The same with diagnoses held off. */
    public Holds withHeldOff(Map<String, HeldOff> other) {
        return new Holds(pins, blocked, confirmed, days, other);
    }

    /** The week that a truck's visit is fixed to, by a day or by itself; null where it is free. */
    public @Nullable IsoWeek pinnedWeek(String truck) {
        DayPin day = days.get(truck);
        return day != null ? IsoWeek.of(day.day()) : pins.get(truck);
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

    /** Whether a truck is pinned to a week after a plan's last one: it waits for a later plan. */
    boolean isPinnedAfter(String truck, IsoWeek lastWeek) {
        IsoWeek pin = pinnedWeek(truck);
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
