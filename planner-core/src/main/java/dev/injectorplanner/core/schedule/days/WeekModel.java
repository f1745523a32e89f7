package dev.injectorplanner.core.schedule.days;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A depot's week as a model for the CP-SAT solver of OR-Tools, under a limit of work that is the same on every machine.
 * Places as many visits as the limits allow, with the least overtime, the fewest days in a bay, and early.
 */
final class WeekModel {
    private static final double WORK = 0.2;
    private static final double ENOUGH = 2_000;
    private static final long UNPLACED = 10_000_000;
    private static final long HELD = 10;
    private static final long OVERTIME = 30;
    private static final long ANOTHER_DAY = 6_000;
    private static final long LATER_DAY = 3_000;

    static {
        Loader.loadNativeLibraries();
    }

    private final WeekBoard board;
    private final List<WorkDay> days;
    private final CpModel model = new CpModel();
    private final List<VisitVariables> visits = new ArrayList<>();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private BoolVar[][] inBay = new BoolVar[0][];

    /**
     * @param board with what is placed already
     * @param visits to be placed
     * @param overtime the most the week may take, in ticks, what the board has taken included
     */
    WeekModel(WeekBoard board, List<DayVisit> visits, int overtime) {
        this.board = board;
        this.days = board.days;
        visits.forEach(visit -> this.visits.add(new VisitVariables(model, visit, days)));
        hours(overtime);
        if (baysDiffer(visits)) {
            eachBay();
        } else {
            allBays();
        }
        dutyGroups();
        this.visits.forEach(this::price);
        model.minimize(cost);
    }

    private void price(VisitVariables visit) {
        long worth = visit.visit.held() ? UNPLACED * HELD : UNPLACED;
        cost.addTerm(visit.placed, -worth);
        cost.add(visit.start);
        for (int day = 0; day < days.size(); day++) {
            cost.addTerm(visit.stands[day], ANOTHER_DAY);
            cost.addTerm(visit.last[day], LATER_DAY * day);
        }
    }

    private void hours(int most) {
        IntVar[] over = new IntVar[days.size()];
        for (int day = 0; day < days.size(); day++) {
            int left = board.plainLeft(day);
            over[day] = model.newIntVar(Math.max(0, -left), Math.max(most, -left), "");
            LinearExprBuilder sum = LinearExpr.newBuilder();
            for (VisitVariables visit : visits) {
                sum.add(visit.work[day]);
            }
            model.addLessOrEqual(sum.addTerm(over[day], -1), left);
            cost.addTerm(over[day], OVERTIME);
        }
        model.addLessOrEqual(LinearExpr.sum(over), Math.max(most, board.overtime()));
    }

    /** Whether it matters which bay a visit has: bays differ by day, or one is asked for or taken. */
    private boolean baysDiffer(List<DayVisit> asked) {
        boolean pinned = asked.stream()
                .anyMatch(visit -> visit.pin() != null && visit.pin().bay() != null);
        return pinned || !board.places().isEmpty() || days.stream().anyMatch(day -> day.bays() != board.bays());
    }

    private void allBays() {
        CumulativeConstraint bays = model.addCumulative(board.bays());
        for (VisitVariables visit : visits) {
            bays.addDemand(interval(visit, visit.placed), 1);
        }
        for (Place place : board.places().values()) {
            bays.addDemand(model.newFixedInterval(place.from(), place.until() - place.from(), ""), 1);
        }
    }

    private IntervalVar interval(VisitVariables visit, BoolVar there) {
        IntVar size = model.newIntVar(0, (long) days.size() * Place.DAY, "");
        return model.newOptionalIntervalVar(visit.from, size, visit.until, there, "");
    }

    private void eachBay() {
        inBay = new BoolVar[visits.size()][board.bays()];
        for (int bay = 0; bay < board.bays(); bay++) {
            List<IntervalVar> there = new ArrayList<>();
            for (int v = 0; v < visits.size(); v++) {
                inBay[v][bay] = model.newBoolVar("");
                there.add(interval(visits.get(v), inBay[v][bay]));
                notInClosedBay(visits.get(v), inBay[v][bay], bay);
            }
            for (Place place : board.places().values()) {
                if (place.bay() == bay) {
                    there.add(model.newFixedInterval(place.from(), place.until() - place.from(), ""));
                }
            }
            model.addNoOverlap(there);
        }
        for (int v = 0; v < visits.size(); v++) {
            model.addEquality(LinearExpr.sum(inBay[v]), visits.get(v).placed);
        }
    }

    private void notInClosedBay(VisitVariables visit, BoolVar there, int bay) {
        DayPin pin = visit.visit.pin();
        if (pin != null && pin.bay() != null && pin.bay() != bay + 1) {
            model.addEquality(there, 0);
        }
        for (int day = 0; day < days.size(); day++) {
            if (days.get(day).bays() <= bay) {
                model.addLessOrEqual(LinearExpr.sum(new BoolVar[] {there, visit.stands[day]}), 1);
            }
        }
    }

    private void dutyGroups() {
        Map<String, List<VisitVariables>> groups = new TreeMap<>();
        for (VisitVariables visit : visits) {
            if (visit.visit.dutyGroup() != null) {
                groups.computeIfAbsent(visit.visit.dutyGroup(), none -> new ArrayList<>())
                        .add(visit);
            }
        }
        groups.forEach((group, those) -> {
            for (int day = 0; day < days.size(); day++) {
                int at = day;
                limit(group, days.get(day).date(), those.stream().map(v -> LinearExpr.term(v.stands[at], 1)));
                List<LocalDate> closed = day + 1 < days.size() ? those.get(0).closedAfter(day) : List.of();
                for (LocalDate date : closed) {
                    limit(group, date, those.stream().map(v -> v.overnight(at)));
                }
            }
        });
    }

    private void limit(String group, LocalDate date, Stream<LinearExpr> standing) {
        int most = board.spare.spare(group, date);
        if (most < visits.size()) {
            LinearExprBuilder sum = LinearExpr.newBuilder();
            standing.forEach(sum::add);
            model.addLessOrEqual(sum, Math.max(0, most));
        }
    }

    /**
     * What was found.
     *
     * @param places of the visits that have one
     * @param proven whether no more of them can be placed
     */
    record Answer(Map<DayVisit, Place> places, boolean proven) {}

    /** @param near places to start from */
    Answer solve(Map<DayVisit, Place> near) {
        visits.forEach(visit -> hint(visit, near.get(visit.visit)));
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setRandomSeed(1)
                .setNumWorkers(1)
                .setCpModelProbingLevel(0)
                .setSymmetryLevel(0)
                .setAbsoluteGapLimit(ENOUGH)
                .setMaxDeterministicTime(WORK);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("the model of a week is not valid: " + model.validate());
        }
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return new Answer(Map.of(), false);
        }
        Map<DayVisit, Place> found = new LinkedHashMap<>();
        for (int v = 0; v < visits.size(); v++) {
            if (solver.booleanValue(visits.get(v).placed)) {
                found.put(visits.get(v).visit, place(solver, v));
            }
        }
        boolean proven = solver.bestObjectiveBound() > solver.objectiveValue() - UNPLACED / 2.0;
        return new Answer(inBays(found), proven);
    }

    private void hint(VisitVariables visit, @Nullable Place near) {
        model.addHint(visit.placed, near != null);
        if (near != null) {
            model.addHint(visit.start, near.start());
            for (int day = 0; day < days.size(); day++) {
                model.addHint(visit.first[day], day == near.firstDay());
                model.addHint(visit.last[day], day == near.lastDay());
                model.addHint(visit.stands[day], near.standsOn(day));
                model.addHint(visit.work[day], near.standsOn(day) ? near.labour()[day - near.firstDay()] : 0);
            }
        }
    }

    private Place place(CpSolver solver, int v) {
        VisitVariables visit = visits.get(v);
        int first = 0;
        int last = 0;
        for (int day = 0; day < days.size(); day++) {
            first = solver.booleanValue(visit.first[day]) ? day : first;
            last = solver.booleanValue(visit.last[day]) ? day : last;
        }
        int[] labour = new int[last - first + 1];
        for (int day = first; day <= last; day++) {
            labour[day - first] = (int) solver.value(visit.work[day]);
        }
        int bay = -1;
        for (int b = 0; inBay.length > 0 && b < inBay[v].length; b++) {
            bay = solver.booleanValue(inBay[v][b]) ? b : bay;
        }
        return new Place(bay, first, (int) solver.value(visit.start), labour, (int) solver.value(visit.end));
    }

    /** Where bays are alike the model counts them only: each visit takes the lowest one that is free. */
    private Map<DayVisit, Place> inBays(Map<DayVisit, Place> found) {
        if (inBay.length > 0) {
            return found;
        }
        List<Map.Entry<DayVisit, Place>> order = new ArrayList<>(found.entrySet());
        order.sort(Comparator.comparingInt(each -> each.getValue().from()));
        Map<DayVisit, Place> placed = new LinkedHashMap<>();
        List<Place> taken = new ArrayList<>(board.places().values());
        for (Map.Entry<DayVisit, Place> each : order) {
            boolean[] used = new boolean[board.bays()];
            taken.stream().filter(other -> other.overlaps(each.getValue())).forEach(other -> used[other.bay()] = true);
            int free = 0;
            while (used[free]) {
                free++;
            }
            Place place = each.getValue().in(free);
            placed.put(each.getKey(), place);
            taken.add(place);
        }
        return placed;
    }
}
