package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.VisitStates;
import dev.injectorplanner.app.web.week.WeekView.Cell;
import dev.injectorplanner.app.web.week.WeekView.Column;
import dev.injectorplanner.app.web.week.WeekView.NotLaid;
import dev.injectorplanner.app.web.week.WeekView.Row;
import dev.injectorplanner.app.web.week.WeekView.Stay;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.schedule.days.DayPlan.DayWork;
import dev.injectorplanner.core.schedule.days.DayPlan.Laid;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The week's board: depots as rows, days as columns. */
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
        double booked =
                plan.visitsOf(week).stream().mapToDouble(Visit::labourHours).sum();
        double available = load.map(WeekLoad::availableHours).orElse(0.0);
        double over = load.map(WeekLoad::overtimeHours).orElse(0.0);
        int visits = plan.visitsOf(week).size();
        return new Row(
                plan.depot(),
                Figures.count(plan.site().bays(), "bay", "bays"),
                booked,
                available,
                DisplayFormat.tenth(booked) + " of " + DisplayFormat.tenth(available) + " h",
                (over > 0
                                ? DisplayFormat.tenth(over) + " h overtime"
                                : DisplayFormat.tenth(Math.max(0, available - booked)) + " h free")
                        + ", " + Figures.count(visits, "visit", "visits"),
                days().stream().map(day -> cell(plan, day)).toList());
    }

    private Cell cell(DepotPlan plan, LocalDate day) {
        double available = available(plan, day);
        List<Stay> stays = new ArrayList<>();
        double booked = 0;
        for (Laid laid : plan.days().laid()) {
            for (DayWork work : laid.days()) {
                Optional<Visit> visit =
                        plan.findVisit(laid).filter(each -> each.week().equals(week));
                if (work.date().equals(day) && visit.isPresent()) {
                    booked += work.labourHours();
                    stays.add(stay(plan, visit.get(), laid, work));
                }
            }
        }
        return new Cell(
                day.toString(),
                DisplayFormat.day(day),
                available > 0,
                booked,
                available,
                DisplayFormat.tenth(booked) + " of " + DisplayFormat.tenth(available) + " h",
                stays);
    }

    private Stay stay(DepotPlan plan, Visit visit, Laid laid, DayWork work) {
        if (!laid.start().toLocalDate().equals(work.date())) {
            return new Stay(
                    visit.truck(),
                    "continues",
                    DisplayFormat.tenth(work.labourHours()) + " h, bay " + laid.bay(),
                    "",
                    "",
                    false,
                    "");
        }
        VisitStates.State state = VisitStates.of(plan, visit, holds.getOrDefault(plan.depot(), Holds.none()));
        String hours = laid.days().size() == 1
                ? DisplayFormat.tenth(visit.labourHours()) + " h"
                : DisplayFormat.tenth(work.labourHours()) + " of " + DisplayFormat.tenth(visit.labourHours()) + " h";
        return new Stay(
                visit.truck(),
                plan.work(visit),
                DisplayFormat.time(laid.start()) + ", " + hours + ", bay " + laid.bay(),
                state.mark(),
                state.words(),
                state.strong(),
                plan.plan().isMain(visit) ? laid.start().toLocalDate().toString() : "");
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
