package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.visit.VisitWork;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The weeks a truck's visit could fall into and what each costs. First cut of the cost: days late, from the day a finding
 * is due until the week's Monday (or today, in the first week), summed over the findings. What is overdue counts as due
 * yesterday, so that it is late in every week. The deferral costs of a life curve take this one's place.
 */
final class OptionBuilder {
    /** A visit may come so many weeks before the week in which its most pressing finding is due. */
    static final int EARLY_WEEKS = 2;

    private static final double SHORTEST_STAY_DAYS = 0.125;

    private final CapacityCalendar calendar;
    private final Policy policy;
    private final LocalDate today;

    OptionBuilder(CapacityCalendar calendar, Policy policy, LocalDate today) {
        this.calendar = calendar;
        this.policy = policy;
        this.today = today;
    }

    TruckOptions optionsOf(VisitWork work) {
        double truckDays = Math.max(SHORTEST_STAY_DAYS, work.labourHours() / policy.bayHoursPerDay());
        IsoWeek firstWeek = IsoWeek.of(today);
        int due = firstWeek.weeksUntil(IsoWeek.of(work.findings().get(0).by()));
        List<VisitOption> options = new ArrayList<>();
        for (int week = Math.max(0, due - EARLY_WEEKS); week < policy.weeks(); week++) {
            if (truckDays <= calendar.daysFree(work.truck(), week)) {
                LocalDate monday = firstWeek.plus(week).monday();
                options.add(new VisitOption(
                        week, work.cylinders(), work.labourHours(), truckDays, daysLate(work.findings(), monday)));
            }
        }
        return new TruckOptions(
                work.truck().truck(), work.truck().depot(), work.truck().dutyGroup(), options, null);
    }

    private double daysLate(List<DueFinding> findings, LocalDate monday) {
        LocalDate day = monday.isBefore(today) ? today : monday;
        double late = 0;
        for (DueFinding finding : findings) {
            LocalDate by = finding.by().isBefore(today) ? today.minusDays(1) : finding.by();
            late += Math.max(0, ChronoUnit.DAYS.between(by, day));
        }
        return late;
    }
}
