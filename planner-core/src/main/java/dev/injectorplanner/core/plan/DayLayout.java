package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.days.DayPlanner;
import dev.injectorplanner.core.schedule.days.DayVisit;
import dev.injectorplanner.core.schedule.days.DepotWeek;
import dev.injectorplanner.core.schedule.days.Shift;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Lays the visits of the coming two weeks into days. */
final class DayLayout {
    /** Weeks that get days. */
    static final int WEEKS = 2;

    /** The shift opens at this hour: a planner default. */
    static final LocalTime OPENS = LocalTime.of(7, 0);

    private static final int LAST_MINUTE = 24 * 60 - 1;

    private final Learned learned;
    private final CapacityCalendar calendar;
    private final Map<String, LocalDate> partsThere;

    /** @param partsThere the day on which a visit's kit is complete, as {@link Allocation#readyDays} names it */
    DayLayout(Learned learned, CapacityCalendar calendar, Map<String, LocalDate> partsThere) {
        this.learned = learned;
        this.calendar = calendar;
        this.partsThere = partsThere;
    }

    List<DepotDays> of(List<Visit> visits) {
        DayPlanner planner = new DayPlanner(new Shift(OPENS, closes(), 1));
        int weeks = Math.min(WEEKS, learned.policy().weeks());
        Map<String, Double> overtime = new HashMap<>();
        calendar.depotCapacity().forEach(row -> overtime.put(row.depot() + " " + row.week(), row.overtimeHours()));
        List<DepotDays> all = new ArrayList<>();
        for (Depot depot : learned.index().fleet().depots()) {
            List<DepotWeek> depotWeeks = new ArrayList<>();
            for (int week = 0; week < weeks; week++) {
                depotWeeks.add(new DepotWeek(
                        week, calendar.openDays(depot, week), overtime.getOrDefault(depot.depot() + " " + week, 0.0)));
            }
            List<DayVisit> ofDepot = visits.stream()
                    .filter(visit -> visit.depot().equals(depot.depot()))
                    .filter(visit -> learned.firstWeek().weeksUntil(visit.week()) < weeks && visit.labourHours() > 0)
                    .map(this::dayVisit)
                    .toList();
            all.add(new DepotDays(depot.depot(), planner.plan(depotWeeks, ofDepot)));
        }
        return all;
    }

    private LocalTime closes() {
        int minute = OPENS.toSecondOfDay() / 60
                + (int) Math.round(60 * learned.policy().bayHoursPerDay());
        return LocalTime.of(0, 0).plusMinutes(Math.min(LAST_MINUTE, minute));
    }

    private DayVisit dayVisit(Visit visit) {
        List<AwayWindow> away = learned.index().awayOf(visit.truck());
        LocalDate parts = partsThere.getOrDefault(Allocation.visit(visit.truck(), visit.week()), learned.today());
        Set<LocalDate> notOn = visit.week()
                .monday()
                .datesUntil(visit.week().sunday().plusDays(1))
                .filter(day -> day.isBefore(parts) || away.stream().anyMatch(window -> window.touches(day, day)))
                .collect(Collectors.toSet());
        return new DayVisit(visit.truck(), learned.firstWeek().weeksUntil(visit.week()), visit.labourHours(), notOn);
    }
}
