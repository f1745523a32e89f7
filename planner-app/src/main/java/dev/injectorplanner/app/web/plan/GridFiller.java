package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.plan.PlanView.Bar;
import dev.injectorplanner.app.web.plan.PlanView.Month;
import dev.injectorplanner.app.web.plan.PlanView.Row;
import dev.injectorplanner.app.web.plan.PlanView.Week;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.units.Figures;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** Weeks as columns, depots as rows, hours as bars against the hours available; overtime above their line. */
final class GridFiller {
    private static final double TALLEST = 90;
    private static final double FLOOR = 104;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH_AND_YEAR = DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);

    private final List<DepotPlan> plans;
    private final IsoWeek first;
    private final int weeks;
    private final IsoWeek shown;
    private final int frozen;
    private final LaterWork later;

    /**
     * @param shown the week that is chosen
     * @param frozen how many weeks from the first move only for cause
     * @param later hours expected on top of the booked ones
     */
    GridFiller(List<DepotPlan> plans, IsoWeek first, int weeks, IsoWeek shown, int frozen, LaterWork later) {
        this.plans = plans;
        this.first = first;
        this.weeks = weeks;
        this.shown = shown;
        this.frozen = frozen;
        this.later = later;
    }

    List<Month> months() {
        List<Month> months = new ArrayList<>();
        IsoWeek from = first;
        int count = 0;
        for (int ahead = 0; ahead <= weeks; ahead++) {
            IsoWeek week = first.plus(ahead);
            if (ahead == weeks || week.monday().getMonth() != from.monday().getMonth()) {
                boolean year = months.isEmpty() || from.monday().getMonthValue() == 1;
                String name = (year && count > 1 ? MONTH_AND_YEAR : MONTH).format(from.monday());
                months.add(new Month(name, count));
                from = week;
                count = 0;
            }
            count++;
        }
        return months;
    }

    List<Week> weeks() {
        return IntStream.range(0, weeks)
                .mapToObj(ahead -> {
                    IsoWeek week = first.plus(ahead);
                    return new Week(week.toString(), DisplayFormat.week(week), week.equals(shown), ahead < frozen);
                })
                .toList();
    }

    List<Row> rows() {
        return plans.stream().map(this::row).toList();
    }

    private Row row(DepotPlan plan) {
        Map<IsoWeek, Double> expected = later.of(plan.depot(), plan.loads());
        double most = Math.max(
                1,
                plan.loads().stream()
                        .mapToDouble(load -> Math.max(
                                load.availableHours(), load.labourHours() + expected.getOrDefault(load.week(), 0.0)))
                        .max()
                        .orElse(1));
        double usual = plan.site().labourHoursPerDay() * plan.site().workDays().size();
        double overtime = plan.site().overtimeHoursPerWeek();
        return new Row(
                plan.depot(),
                DisplayFormat.pieces(usual) + " h a week",
                overtime > 0 ? "overtime up to " + DisplayFormat.pieces(overtime) + " h" : "no overtime",
                IntStream.range(0, weeks)
                        .mapToObj(ahead ->
                                bar(plan, first.plus(ahead), most, expected.getOrDefault(first.plus(ahead), 0.0)))
                        .toList());
    }

    private Bar bar(DepotPlan plan, IsoWeek week, double most, double expected) {
        WeekLoad load = plan.findLoad(week).orElse(new WeekLoad(plan.depot(), week, 0, 0, 0, 0, 0, 0));
        double there = load.availableHours() / most * TALLEST;
        double booked = Math.min(load.labourHours(), load.availableHours()) / most * TALLEST;
        double over = Math.max(0, load.labourHours() - load.availableHours()) / most * TALLEST;
        String words = DisplayFormat.tenth(load.labourHours()) + " of " + DisplayFormat.tenth(load.availableHours())
                + " hours"
                + (load.overtimeHours() > 0 ? ", " + DisplayFormat.tenth(load.overtimeHours()) + " overtime" : "")
                + (expected >= 0.5 ? ", about " + Figures.whole(expected) + " more expected" : "");
        double more = expected >= 0.5 ? expected / most * TALLEST : 0;
        double full = load.labourHours() / most * TALLEST;
        return new Bar(
                week.toString(),
                tenth(FLOOR - there),
                tenth(there),
                tenth(FLOOR - booked),
                tenth(booked),
                tenth(FLOOR - there - over),
                tenth(over),
                tenth(FLOOR - full - more),
                tenth(more),
                DisplayFormat.tenth(load.labourHours()),
                expected >= 0.5 ? "+" + Figures.whole(expected) : "",
                words,
                week.equals(shown));
    }

    private static double tenth(double value) {
        return Math.rint(value * 10) / 10;
    }
}
