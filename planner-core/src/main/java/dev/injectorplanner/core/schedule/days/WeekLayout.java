package dev.injectorplanner.core.schedule.days;

import static java.util.Comparator.comparing;

import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One depot's week: first as things fall into place by themselves, then by search where that is not good enough. */
final class WeekLayout {
    private final DepotWeek week;
    private final DutySpare spare;
    private final List<DayVisit> diagnoses;
    private final List<DayVisit> visits;
    private final WeekBoard board;
    private final List<String> limits = new ArrayList<>();
    private final List<DayVisit> left = new ArrayList<>();

    WeekLayout(DepotWeek week, List<DayVisit> all, DutySpare spare) {
        this.week = week;
        this.spare = spare;
        Comparator<DayVisit> longestFirst =
                Comparator.comparingInt(Ticks::labour).reversed().thenComparing(DayVisit::truck);
        this.diagnoses = all.stream()
                .filter(DayVisit::diagnosis)
                .sorted(comparing(DayVisit::truck))
                .toList();
        this.visits = all.stream()
                .filter(visit -> !visit.diagnosis())
                .sorted(comparing((DayVisit visit) -> visit.pin() == null)
                        .thenComparing(visit -> !visit.held())
                        .thenComparing(longestFirst))
                .toList();
        this.board = boardWithDiagnoses();
    }

    private WeekBoard boardWithDiagnoses() {
        WeekBoard empty = new WeekBoard(week, spare);
        for (DayVisit visit : diagnoses) {
            Place place = DiagnosisPlanner.placeOf(empty, visit);
            if (place == null) {
                throw new IllegalArgumentException("the diagnosis of truck " + visit.truck()
                        + " has no place on a day of its week that it could have: " + visit.pin());
            }
            empty.take(visit, place);
        }
        return empty;
    }

    void lay() {
        Map<DayVisit, Place> simple = simple();
        if (simple.size() < visits.size() || isStretched(simple)) {
            search(simple);
        } else {
            simple.forEach(board::take);
        }
        visits.stream().filter(visit -> !board.places().containsKey(visit)).forEach(left::add);
    }

    /** One after the other, the longest first, each where it is done soonest without overtime. */
    private Map<DayVisit, Place> simple() {
        WeekBoard trial = boardWithDiagnoses();
        Map<DayVisit, Place> places = new LinkedHashMap<>();
        for (DayVisit visit : visits) {
            Place place = trial.best(visit);
            if (place != null) {
                trial.take(visit, place);
                places.put(visit, place);
            }
        }
        return places;
    }

    /** Whether a visit stands on more days than its work needs. */
    private boolean isStretched(Map<DayVisit, Place> places) {
        int most = week.days().stream()
                .mapToInt(day -> Math.min(Ticks.work(day), Ticks.plain(day)))
                .max()
                .orElse(0);
        return places.entrySet().stream()
                .anyMatch(each -> (each.getValue().days() - 1) * most >= Ticks.labour(each.getKey()));
    }

    private void search(Map<DayVisit, Place> near) {
        if (week.days().isEmpty() || board.bays() == 0) {
            return;
        }
        int most = Math.max(Ticks.overtime(week), board.overtime());
        int paid = Math.max(board.overtime(), Math.min(most, needed()));
        WeekModel.Answer plain = new WeekModel(board, visits, paid).solve(near);
        WeekModel.Answer taken = plain;
        if (plain.places().size() < visits.size() && paid < most) {
            WeekModel.Answer more = new WeekModel(board, visits, most).solve(plain.places());
            if (more.places().size() > plain.places().size()) {
                taken = more;
            }
        }
        Map<DayVisit, Place> best = near.size() > taken.places().size() ? near : taken.places();
        best.forEach(board::take);
        if (board.overtime() > paid) {
            name(plain, paid);
        }
    }

    /** What all visits of the week take beyond its plain hours. */
    private int needed() {
        int plain = week.days().stream().mapToInt(Ticks::plain).sum();
        int asked = visits.stream().mapToInt(Ticks::labour).sum()
                + diagnoses.stream().mapToInt(Ticks::labour).sum();
        return Math.max(0, asked - plain);
    }

    private void name(WeekModel.Answer plain, int paid) {
        String missing = visits.stream()
                .filter(visit -> !plain.places().containsKey(visit))
                .map(DayVisit::truck)
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        limits.add("Week " + week.week() + ": " + Figures.hours(Ticks.hours(board.overtime() - paid))
                + " of overtime though plain hours are left elsewhere. Limit: " + missing
                + (plain.proven() ? " would have" : " was found") + " no place without it, with whole days in a bay,"
                + " starts on the quarter hour, no piece under an hour, and the days on which trucks can come.");
    }

    List<DayPlan.Laid> laid() {
        List<DayPlan.Laid> rows = new ArrayList<>();
        board.places().forEach((visit, place) -> rows.add(board.told(visit, place)));
        return rows;
    }

    List<DayPlan.NotLaid> notLaid() {
        LayoutReasons reasons = new LayoutReasons(week, board, spare);
        return left.stream()
                .map(visit -> new DayPlan.NotLaid(visit.truck(), week.week(), reasons.of(visit)))
                .toList();
    }

    List<String> limits() {
        return limits;
    }

    List<DayPlan.DayLoad> loads() {
        List<DayPlan.DayLoad> rows = new ArrayList<>();
        for (int day = 0; day < week.days().size(); day++) {
            WorkDay open = week.days().get(day);
            int booked = Ticks.plain(open) - board.plainLeft(day);
            rows.add(new DayPlan.DayLoad(
                    open.date(),
                    open.labourHours(),
                    Ticks.hours(booked),
                    Ticks.hours(Math.max(0, -board.plainLeft(day))),
                    open.bays()));
        }
        return rows;
    }
}
