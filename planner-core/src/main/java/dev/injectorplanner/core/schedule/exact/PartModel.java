package dev.injectorplanner.core.schedule.exact;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** The model of a part: a Boolean an option, at most one a truck, hours with overtime, bay-days, duty groups. */
final class PartModel {
    private static final double DAY_PARTS = 1e6;
    private static final double ROUNDING = 1e-3;

    static {
        Loader.loadNativeLibraries();
    }

    private final Problem problem;
    private final Scope scope;
    private final int[] offered;
    private final CostScale.Scaled scale;
    private final CpModel model = new CpModel();
    private final BoolVar[] chosen;
    private final LinearExprBuilder cost = LinearExpr.newBuilder();

    PartModel(Problem problem, Scope scope, int[] offered, CostScale.Scaled scale) {
        this.problem = problem;
        this.scope = scope;
        this.offered = offered;
        this.scale = scale;
        this.chosen = new BoolVar[offered.length];
        TreeMap<Integer, List<Integer>> trucks = new TreeMap<>();
        TreeMap<Integer, List<Integer>> cells = new TreeMap<>();
        TreeMap<Integer, List<Integer>> groups = new TreeMap<>();
        for (int i = 0; i < offered.length; i++) {
            chosen[i] = model.newBoolVar("");
            cost.addTerm(chosen[i], scale.whole(problem.cost[offered[i]]));
            file(trucks, problem.truckOf[offered[i]], i);
            file(cells, problem.cellOf[offered[i]], i);
            if (problem.groupOf[offered[i]] >= 0) {
                file(groups, problem.groupOf[offered[i]], i);
            }
        }
        trucks.forEach(this::oneVisit);
        cells.forEach(this::hours);
        cells.forEach((cell, list) -> days(list, scope.bayDays()[cell]));
        groups.forEach((group, list) -> days(list, scope.groupDays()[group]));
        model.minimize(cost);
    }

    private static void file(TreeMap<Integer, List<Integer>> lists, int key, int index) {
        lists.computeIfAbsent(key, none -> new ArrayList<>()).add(index);
    }

    private void oneVisit(int truck, List<Integer> list) {
        Literal[] ways = list.stream().map(i -> chosen[i]).toArray(Literal[]::new);
        if (scope.mustCome(problem, truck)) {
            model.addExactlyOne(ways);
        } else {
            model.addAtMostOne(ways);
        }
    }

    private void hours(int cell, List<Integer> list) {
        Cell there = problem.cells[cell];
        int used = scope.usedUnits()[cell];
        LinearExprBuilder sum = LinearExpr.newBuilder();
        list.forEach(i -> sum.addTerm(chosen[i], problem.high[offered[i]]));
        int over = there.units() - there.plainUnits();
        if (over <= 0 || there.capacity().overtimePremium() == 0) {
            model.addLessOrEqual(sum, there.units() - used);
            return;
        }
        int already = Math.max(0, used - there.plainUnits());
        IntVar overtime = model.newIntVar(already, Math.max(over, already), "");
        sum.addTerm(overtime, -1);
        model.addLessOrEqual(sum, there.plainUnits() - used);
        double premium = there.capacity().overtimePremium();
        cost.addTerm(overtime, scale.whole(premium * there.hoursPerUnit()));
        cost.add(-scale.whole(premium * there.hoursPerUnit()) * already);
        double rest = already > 0 ? 0 : there.plainRestHours();
        if (rest > 0) {
            BoolVar any = model.newBoolVar("");
            model.addLessOrEqual(any, overtime);
            cost.addTerm(any, -scale.whole(premium * rest));
        }
    }

    private void days(List<Integer> list, double limit) {
        double most = 0;
        for (int i : list) {
            most += problem.days[offered[i]];
        }
        if (most <= limit) {
            return;
        }
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int i : list) {
            sum.addTerm(chosen[i], (long) Math.ceil(problem.days[offered[i]] * DAY_PARTS - ROUNDING));
        }
        model.addLessOrEqual(sum, (long) Math.floor(limit * DAY_PARTS + ROUNDING));
    }

    /** Tells the solver a choice to start from. */
    void hint(int[] now) {
        Set<Integer> in = new HashSet<>();
        Arrays.stream(now).forEach(in::add);
        for (int i = 0; i < offered.length; i++) {
            model.addHint(chosen[i], in.contains(offered[i]));
        }
    }

    CpModel model() {
        return model;
    }

    BoolVar variable(int i) {
        return chosen[i];
    }
}
