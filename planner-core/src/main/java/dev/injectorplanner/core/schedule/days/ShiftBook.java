package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.schedule.OpenDay;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * When the bays of each depot are worked in: by its shifts, else by the planner's usual one, from 7:00 with half an hour's
 * break at noon. A day of the week without a shift of its own, open all the same, has those of the depot's first.
 */
public final class ShiftBook {
    /** The usual shift opens at this hour: a planner default. */
    public static final LocalTime OPENS = LocalTime.of(7, 0);

    private static final LocalTime NOON = LocalTime.of(12, 0);
    private static final int BREAK_MINUTES = 30;
    private static final int DAY_MINUTES = 24 * 60;
    private static final int LONG_SHIFT = 6 * 60;
    private static final LocalTime LAST_MINUTE = LocalTime.of(23, 59);

    private final FleetIndex index;
    private final double usualHours;
    private final Map<String, Map<DayOfWeek, List<Span>>> spans = new HashMap<>();

    /** @param usualHours hours of work a bay gets on a day where a depot has no shifts, 1 to 24 */
    public ShiftBook(FleetIndex index, double usualHours) {
        this.index = index;
        this.usualHours = Require.within("bay_hours_per_day", usualHours, 1, 24);
        for (Depot depot : index.fleet().depots()) {
            Map<DayOfWeek, List<Span>> days = new HashMap<>();
            for (DayOfWeek day : DayOfWeek.values()) {
                days.put(day, made(depot.depot(), day));
            }
            spans.put(depot.depot(), days);
        }
    }

    private List<Span> made(String depot, DayOfWeek day) {
        List<DepotShift> all = index.shiftsOf(depot);
        if (all.isEmpty()) {
            return usual();
        }
        boolean own = all.stream().anyMatch(shift -> shift.weekday() == day);
        DayOfWeek taken = own ? day : all.get(0).weekday();
        List<Span> parts = new ArrayList<>();
        for (DepotShift shift : all) {
            LocalTime breakStart = shift.breakStart();
            LocalTime breakEnd = shift.breakEnd();
            if (shift.weekday() == taken) {
                add(parts, minute(shift.start()), breakStart == null ? minute(shift.end()) : minute(breakStart));
                add(parts, breakEnd == null ? DAY_MINUTES : minute(breakEnd), minute(shift.end()));
            }
        }
        return merged(parts);
    }

    private static void add(List<Span> parts, int from, int to) {
        if (from < to) {
            parts.add(new Span(from, to));
        }
    }

    /** The last minute of a day stands for its end. */
    private static int minute(LocalTime time) {
        return time.equals(LAST_MINUTE) ? DAY_MINUTES : time.toSecondOfDay() / 60;
    }

    private static List<Span> merged(List<Span> parts) {
        List<Span> merged = new ArrayList<>();
        for (Span part : parts.stream()
                .sorted(Comparator.comparingInt(Span::from).thenComparingInt(Span::to))
                .toList()) {
            Span last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && part.from() <= last.to()) {
                merged.set(merged.size() - 1, new Span(last.from(), Math.max(last.to(), part.to())));
            } else {
                merged.add(part);
            }
        }
        return merged;
    }

    private List<Span> usual() {
        int work = (int) Math.round(usualHours * 60);
        int rest = work > LONG_SHIFT && work + BREAK_MINUTES <= DAY_MINUTES ? BREAK_MINUTES : 0;
        int opens = Math.min(minute(OPENS), DAY_MINUTES - work - rest);
        int noon = minute(NOON);
        return rest == 0
                ? List.of(new Span(opens, opens + work))
                : List.of(new Span(opens, noon), new Span(noon + rest, opens + work + rest));
    }

    /** Whether a depot has shifts of its own. */
    public boolean isSites(String depot) {
        return !index.shiftsOf(depot).isEmpty();
    }

    /** Hours of work that a bay of a depot gets on a usual day. */
    public double bayHoursPerDay(Depot depot) {
        return depot.workDays().stream()
                        .mapToInt(day -> spans(depot.depot(), day).stream()
                                .mapToInt(Span::minutes)
                                .sum())
                        .average()
                        .orElse(60 * usualHours)
                / 60;
    }

    private List<Span> spans(String depot, DayOfWeek day) {
        return spans.getOrDefault(depot, Map.of()).getOrDefault(day, usual());
    }

    /** An open day with the times of its depot. */
    public WorkDay day(String depot, OpenDay open) {
        return new WorkDay(
                open.date(),
                open.labourHours(),
                open.bays(),
                spans(depot, open.date().getDayOfWeek()));
    }
}
