package dev.injectorplanner.core.schedule.days;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;

/**
 * Visits laid into days.
 *
 * @param laid by start, bay and truck
 * @param notLaid visits for which their week has no place, each with the reason
 * @param loads hours of each open day, by date
 * @param limits limits that made a week use overtime while plain hours are left, or made a pin give way, in words
 */
public record DayPlan(List<Laid> laid, List<NotLaid> notLaid, List<DayLoad> loads, List<String> limits) {
    public DayPlan {
        laid = List.copyOf(laid);
        notLaid = List.copyOf(notLaid);
        loads = loads == null ? List.of() : List.copyOf(loads); // a plan that was kept before days had sums
        limits = limits == null ? List.of() : List.copyOf(limits);
    }

    /** Both, of different weeks. */
    public DayPlan with(DayPlan later) {
        return new DayPlan(
                both(laid, later.laid),
                both(notLaid, later.notLaid),
                both(loads, later.loads),
                both(limits, later.limits));
    }

    private static <R> List<R> both(List<R> one, List<R> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    /** Without sums of days. */
    public DayPlan(List<Laid> laid, List<NotLaid> notLaid) {
        this(laid, notLaid, List.of(), List.of());
    }

    /**
     * A visit with its place. Its bay is held from start to end, nights and breaks included.
     *
     * @param truck the truck
     * @param bay bay, counted from 1
     * @param start local time of the depot
     * @param end local time of the depot
     * @param days what is done on each day it stands
     * @param diagnosis whether it is the truck's diagnosis visit
     */
    public record Laid(
            String truck, int bay, LocalDateTime start, LocalDateTime end, List<DayWork> days, boolean diagnosis) {
        public Laid {
            days = List.copyOf(days);
        }

        /** An ordinary visit. */
        public Laid(String truck, int bay, LocalDateTime start, LocalDateTime end, List<DayWork> days) {
            this(truck, bay, start, end, days, false);
        }
    }

    /** Labour of one visit on one day. */
    public record DayWork(LocalDate date, double labourHours) {}

    /**
     * Hours of a day.
     *
     * @param date the day
     * @param availableHours technicians' plain hours
     * @param bookedHours hours booked, overtime included
     * @param overtimeHours hours booked beyond the plain ones
     * @param bays bays in use
     */
    public record DayLoad(LocalDate date, double availableHours, double bookedHours, double overtimeHours, int bays) {}

    /** A visit without a place, and why. */
    public record NotLaid(String truck, int week, String reason) {}
}
