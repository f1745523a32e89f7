package dev.injectorplanner.core.schedule.days;

import static java.util.Comparator.comparing;

import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** One depot's week: first as things fall into place by themselves, then by search where that is not good enough. */
final class WeekLayout {
    /** Up to this many visits the week is searched through; more are placed one by one in several orders. */
    private static final int SMALL = 18;

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
        Map<DayVisit, Place> simple = new OneByOne(this::boardWithDiagnoses, visits).best(board.overtime());
        if (simple.size() < visits.size() || isStretched(simple)) {
            search(simple);
        } else {
            simple.forEach(board::take);
        }
        visits.stream().filter(visit -> !board.places().containsKey(visit)).forEach(left::add);
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
        boolean small = visits.size() <= SMALL;
        Map<DayVisit, Place> best = better(near, new OneByOne(this::boardWithDiagnoses, visits).best(paid));
        boolean proven = false;
        if (small) {
            WeekModel.Answer answer = new WeekModel(board, visits, paid).solve(best);
            best = better(answer.places(), best);
            proven = answer.proven();
        }
        Map<DayVisit, Place> plain = best;
        if (best.size() < visits.size() && paid < most) {
            best = better(best, new OneByOne(this::boardWithDiagnoses, visits).best(most));
            if (small && best.size() < visits.size()) {
                best = better(
                        best, new WeekModel(board, visits, most).solve(best).places());
            }
        }
        best.forEach(board::take);
        if (board.overtime() > paid) {
            name(plain, proven);
        }
    }

    /** The one that places more, those with a fixed week first; the first of equals. */
    private static Map<DayVisit, Place> better(Map<DayVisit, Place> one, Map<DayVisit, Place> other) {
        return OneByOne.worth(other) > OneByOne.worth(one) ? other : one;
    }

    /** What all visits of the week take beyond its plain hours. */
    private int needed() {
        int plain = week.days().stream().mapToInt(Ticks::plain).sum();
        int asked = visits.stream().mapToInt(Ticks::labour).sum()
                + diagnoses.stream().mapToInt(Ticks::labour).sum();
        return Math.max(0, asked - plain);
    }

    private void name(Map<DayVisit, Place> plain, boolean proven) {
        String missing = visits.stream()
                .filter(visit -> !plain.containsKey(visit))
                .map(DayVisit::truck)
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        limits.add("Week " + week.week() + ": " + Figures.hours(Ticks.hours(board.overtime()))
                + " of overtime though plain hours are left on other days. Limit: " + missing
                + (proven ? " would have" : " was found") + " no place without it, with whole days in a bay,"
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
