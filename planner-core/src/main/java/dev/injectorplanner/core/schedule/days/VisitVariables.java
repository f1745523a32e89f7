package dev.injectorplanner.core.schedule.days;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/**
 * One visit in the model of a week: whether it is placed, the days it stands without a gap, its work on each of them, and
 * its start and end. It starts on a quarter hour, works from opening on every later day, and no piece is a crumb.
 */
final class VisitVariables {
    final DayVisit visit;
    final BoolVar placed;
    final BoolVar[] first;
    final BoolVar[] last;
    final BoolVar[] stands;
    final IntVar[] work;
    final IntVar start;
    final IntVar end;
    final IntVar from;
    final IntVar until;
    private final CpModel model;
    private final List<WorkDay> days;

    VisitVariables(CpModel model, DayVisit visit, List<WorkDay> days) {
        this.model = model;
        this.visit = visit;
        this.days = days;
        int count = days.size();
        int longest = days.stream().mapToInt(Ticks::work).max().orElse(0);
        placed = model.newBoolVar("");
        first = bools(count);
        last = bools(count);
        stands = bools(count);
        work = new IntVar[count];
        start = model.newIntVarFromDomain(starts(days), "");
        end = model.newIntVar(0, longest, "");
        Arrays.setAll(work, day -> model.newIntVar(0, Math.min(Ticks.labour(visit), Ticks.work(days.get(day))), ""));
        from = place(first, start);
        until = place(last, end);
        model.addEquality(LinearExpr.sum(first), placed);
        model.addEquality(LinearExpr.sum(last), placed);
        for (int day = 0; day < count; day++) {
            onDay(day);
        }
        LinearExprBuilder all = LinearExpr.newBuilder().addTerm(placed, -Ticks.labour(visit));
        Arrays.stream(work).forEach(all::add);
        model.addEquality(all, 0);
        model.addGreaterOrEqual(
                LinearExpr.newBuilder().add(until).addTerm(from, -1).addTerm(placed, -1), LinearExpr.constant(-1));
        keepOut();
        keepPin();
    }

    private BoolVar[] bools(int count) {
        BoolVar[] bools = new BoolVar[count];
        Arrays.setAll(bools, i -> model.newBoolVar(""));
        return bools;
    }

    private static Domain starts(List<WorkDay> days) {
        return Domain.fromValues(days.stream()
                .flatMap(day -> day.starts().stream())
                .mapToLong(minute -> (long) minute * Ticks.MINUTE)
                .sorted()
                .distinct()
                .toArray());
    }

    private IntVar place(BoolVar[] day, IntVar time) {
        LinearExprBuilder sum = LinearExpr.newBuilder().add(time);
        for (int i = 0; i < day.length; i++) {
            sum.addTerm(day[i], (long) i * Place.DAY);
        }
        IntVar moment = model.newIntVar(0, (long) day.length * Place.DAY, ""); // an interval takes one variable an end
        model.addEquality(moment, sum);
        return moment;
    }

    private void onDay(int day) {
        int most = Ticks.work(days.get(day));
        LinearExprBuilder change = LinearExpr.newBuilder().add(stands[day]).addTerm(first[day], -1);
        if (day > 0) {
            change.addTerm(stands[day - 1], -1).add(last[day - 1]);
        }
        model.addEquality(change, 0);
        if (day == days.size() - 1) {
            model.addEquality(stands[day], last[day]);
        }
        model.addLessOrEqual(last[day], stands[day]);
        model.addLessOrEqual(work[day], LinearExpr.term(stands[day], most));
        int piece = Math.min(Ticks.labour(visit), Ticks.LEAST_PIECE);
        model.addGreaterOrEqual(work[day], LinearExpr.term(stands[day], piece));
        model.addLessOrEqual(LinearExpr.sum(new IntVar[] {start, work[day]}), most)
                .onlyEnforceIf(first[day]);
        model.addLinearExpressionInDomain(start, starts(List.of(days.get(day)))).onlyEnforceIf(first[day]);
        model.addEquality(end, work[day]).onlyEnforceIf(new Literal[] {last[day], first[day].not()});
        model.addEquality(end, LinearExpr.sum(new IntVar[] {start, work[day]}))
                .onlyEnforceIf(new Literal[] {last[day], first[day]});
    }

    /** Days on which the truck cannot be in, nights over closed ones too. */
    private void keepOut() {
        for (int day = 0; day < days.size(); day++) {
            if (visit.notOn().contains(days.get(day).date())) {
                model.addEquality(stands[day], 0);
            }
            boolean closedAway =
                    day + 1 < days.size() && closedAfter(day).stream().anyMatch(visit.notOn()::contains);
            if (closedAway) {
                model.addEquality(overnight(day), 0);
            }
        }
    }

    /** Closed days between an open day and the next. */
    List<LocalDate> closedAfter(int day) {
        LocalDate next = days.get(day).date().plusDays(1);
        return next.datesUntil(days.get(day + 1).date()).toList();
    }

    /** 1 where it stands from this open day until the next. */
    LinearExpr overnight(int day) {
        return LinearExpr.newBuilder().add(stands[day]).addTerm(last[day], -1).build();
    }

    private void keepPin() {
        DayPin pin = visit.pin();
        if (pin == null) {
            return;
        }
        for (int day = 0; day < days.size(); day++) {
            WorkDay open = days.get(day);
            int at = pin.start() == null ? 0 : open.workAt(pin.start().toSecondOfDay() / 60);
            if (!open.date().equals(pin.day()) || at < 0) {
                model.addEquality(first[day], 0);
            } else if (pin.start() != null) {
                model.addEquality(start, (long) at * Ticks.MINUTE).onlyEnforceIf(first[day]);
            }
        }
    }
}
