package dev.injectorplanner.core.calendar;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The weeks of a plan: the first is what is left of this week, the others begin on their Mondays. Whatever a week costs is
 * reckoned for the day it begins.
 *
 * @param today the day of the plan
 * @param weeks number of weeks, 1 or more
 */
public record PlanWeeks(LocalDate today, int weeks) {
    public PlanWeeks {
        Require.within("weeks", weeks, 1, 104);
    }

    /** The day a week begins for the plan: today for the first, else its Monday; {@code week} may lie beyond the plan. */
    public LocalDate dayOf(int week) {
        return week == 0 ? today : IsoWeek.of(today).plus(week).monday();
    }

    /** Weeks from today until a week begins; with fractions, since today may be any weekday. */
    public double weeksUntil(int week) {
        return ChronoUnit.DAYS.between(today, dayOf(week)) / 7.0;
    }

    /** {@link #weeksUntil} of every week of the plan. */
    public double[] moments() {
        double[] moments = new double[weeks];
        for (int week = 0; week < weeks; week++) {
            moments[week] = weeksUntil(week);
        }
        return moments;
    }

    /** Weeks from today until the plan's last week is over. */
    public double horizon() {
        return weeksUntil(weeks);
    }
}
