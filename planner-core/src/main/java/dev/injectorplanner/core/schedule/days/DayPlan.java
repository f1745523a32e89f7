package dev.injectorplanner.core.schedule.days;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/**
 * Visits laid into days.
 *
 * @param laid by start, bay and truck
 * @param notLaid visits for which their week has no place though its sums may fit, each with the reason
 */
public record DayPlan(List<Laid> laid, List<NotLaid> notLaid) {
    public DayPlan {
        laid = List.copyOf(laid);
        notLaid = List.copyOf(notLaid);
    }

    /**
     * A visit with its place. Its bay is held from start to end, nights included.
     *
     * @param truck the truck
     * @param bay bay, counted from 1
     * @param start local time of the depot
     * @param end local time of the depot
     * @param days what is done on each day it stands
     */
    public record Laid(String truck, int bay, LocalDateTime start, LocalDateTime end, List<DayWork> days) {
        public Laid {
            days = List.copyOf(days);
        }
    }

    /** Labour of one visit on one day. */
    public record DayWork(LocalDate date, double labourHours) {}

    /** A visit without a place, and why. */
    public record NotLaid(String truck, int week, String reason) {}
}
