package dev.injectorplanner.core.schedule.days;

/**
 * Time in ticks of twelve seconds: a minute and a hundredth of an hour, in which the weeks are scheduled, are both whole
 * numbers of them, so that a week which is full to the last hundredth can be laid out.
 */
final class Ticks {
    static final int MINUTE = 5;
    static final int HOUR = 60 * MINUTE;

    /** No visit of an hour or more is split into pieces shorter than this. */
    static final int LEAST_PIECE = HOUR;

    private static final double ROUNDING = 1e-6;

    private Ticks() {}

    /** Labour of a visit, rounded up. */
    static int labour(DayVisit visit) {
        return (int) Math.ceil(visit.labourHours() * HOUR - ROUNDING);
    }

    /** Technicians' plain time of a day, rounded down. */
    static int plain(WorkDay day) {
        return (int) Math.floor(day.labourHours() * HOUR + ROUNDING);
    }

    /** Time that one bay is worked in on a day. */
    static int work(WorkDay day) {
        return day.workMinutes() * MINUTE;
    }

    static int overtime(DepotWeek week) {
        return (int) Math.floor(week.overtimeHours() * HOUR + ROUNDING);
    }

    static double hours(int ticks) {
        return (double) ticks / HOUR;
    }

    /** Whole minutes, rounded up. */
    static int minutes(int ticks) {
        return (ticks + MINUTE - 1) / MINUTE;
    }
}
