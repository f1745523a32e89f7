package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.week.WeekView.Cell;
import dev.injectorplanner.app.web.week.WeekView.Column;
import dev.injectorplanner.app.web.week.WeekView.NotLaid;
import dev.injectorplanner.app.web.week.WeekView.Row;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The week's board: days as columns, below each depot a lane for each of its bays. */
final class BoardFiller {
    private final IsoWeek week;
    private final List<DepotPlan> plans;
    private final Map<String, Holds> holds;

    BoardFiller(IsoWeek week, List<DepotPlan> plans, Map<String, Holds> holds) {
        this.week = week;
        this.plans = plans;
        this.holds = holds;
    }

    /** Days on which any of the depots works. */
    private List<LocalDate> days() {
        return IntStream.range(0, 7)
                .mapToObj(day -> week.monday().plusDays(day))
                .filter(day -> plans.stream().anyMatch(plan -> available(plan, day) > 0))
                .toList();
    }

    LocalDate last() {
        List<LocalDate> days = days();
        return days.isEmpty() ? week.sunday() : days.get(days.size() - 1);
    }

    List<Column> columns() {
        return days().stream()
                .map(day -> new Column(
                        DisplayFormat.day(day),
                        plans.stream().anyMatch(plan -> plan.today().equals(day))))
                .toList();
    }

    List<Row> rows() {
        return plans.stream().map(this::row).toList();
    }

    private Row row(DepotPlan plan) {
        Optional<WeekLoad> load = plan.findLoad(week);
        List<Visit> visits = plan.visitsOf(week);
        double booked = visits.stream().mapToDouble(Visit::labourHours).sum();
        double available = load.map(WeekLoad::availableHours).orElse(0.0);
        double over = load.map(WeekLoad::overtimeHours).orElse(0.0);
        BayLanes lanes = new BayLanes(plan, week, days(), day -> available(plan, day) > 0, holds(plan));
        return new Row(
                plan.depot(),
                Figures.count(plan.site().bays(), "bay", "bays"),
                booked,
                available,
                DisplayFormat.tenth(booked) + " of " + DisplayFormat.tenth(available) + " h",
                (over > 0
                                ? DisplayFormat.tenth(over) + " h overtime"
                                : DisplayFormat.tenth(Math.max(0, available - booked)) + " h free")
                        + ", " + Figures.count(visits.size(), "visit", "visits"),
                days().stream().map(day -> cell(plan, day, lanes.booked(day))).toList(),
                lanes.lanes(),
                lanes.quarters(),
                lanes.span());
    }

    private Holds holds(DepotPlan plan) {
        return holds.getOrDefault(plan.depot(), Holds.none());
    }

    private static Cell cell(DepotPlan plan, LocalDate day, double booked) {
        double available = available(plan, day);
        return new Cell(
                day.toString(),
                DisplayFormat.day(day),
                available > 0,
                booked,
                available,
                DisplayFormat.tenth(booked) + " of " + DisplayFormat.tenth(available) + " h");
    }

    private static double available(DepotPlan plan, LocalDate day) {
        Depot site = plan.site();
        return plan.fleet().fleet().capacity().stream()
                .filter(row -> row.depot().equals(site.depot()) && row.date().equals(day))
                .map(CapacityOverride::labourHours)
                .findFirst()
                .orElse(site.workDays().contains(day.getDayOfWeek()) ? site.labourHoursPerDay() : 0);
    }

    /** Visits of the week without a day. */
    List<NotLaid> notLaid() {
        List<NotLaid> rows = new ArrayList<>();
        for (DepotPlan plan : plans) {
            for (Visit visit : plan.visitsOf(week)) {
                if (DepotDays.find(plan.plan().days(), visit).isEmpty()) {
                    rows.add(new NotLaid(
                            visit.truck(),
                            plan.depot(),
                            plan.work(visit),
                            DisplayFormat.tenth(visit.labourHours()),
                            reason(plan, visit)));
                }
            }
        }
        return rows;
    }

    private static String reason(DepotPlan plan, Visit visit) {
        return plan.days().notLaid().stream()
                .filter(each -> each.truck().equals(visit.truck()))
                .map(DayPlan.NotLaid::reason)
                .findFirst()
                .orElse("days are set for the plan’s first two weeks only");
    }
}
