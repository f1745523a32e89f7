package dev.injectorplanner.core.schedule.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;

/**
 * The problem with the depots' hours and bays left out: what is left falls apart into duty groups, each small enough to be
 * solved exactly, and trucks without a group, which take their cheapest visit. The sum is a lower bound; and where the depot
 * has room for it, as most depots have in most weeks, it is the best schedule there is.
 */
final class GroupBound {
    /** The most the exact solver may work on one group, in its deterministic time. */
    private static final double WORK_A_GROUP = 0.3;

    /** The most it may work on all of them. */
    private static final double WORK_IN_ALL = 4;

    private final Problem problem;
    private final int seed;
    private final DoubleSupplier secondsLeft;
    private final List<Integer> chosen = new ArrayList<>();
    private double bound;
    private double work;

    GroupBound(Problem problem, int seed, DoubleSupplier secondsLeft) {
        this.problem = problem;
        this.seed = seed;
        this.secondsLeft = secondsLeft;
    }

    /** Lower bound of the cost of any schedule. */
    double bound() {
        return bound;
    }

    /** What it took, in the exact solver's deterministic time. */
    double work() {
        return work;
    }

    GroupBound solve(Workers workers) {
        List<List<Integer>> groups = groups();
        double each = Math.min(WORK_A_GROUP, WORK_IN_ALL / Math.max(1, groups.size()));
        ExactPart.Answer[] answers = new ExactPart.Answer[groups.size()];
        workers.forEach(groups.size(), (i, worker) -> answers[i] = solve(groups.get(i), each));
        for (int i = 0; i < answers.length; i++) {
            bound += answers[i].found() ? answers[i].bound() : cheapestOfEach(groups.get(i));
            work += answers[i].work();
            Arrays.stream(answers[i].chosen()).forEach(chosen::add);
        }
        return this;
    }

    private ExactPart.Answer solve(List<Integer> offered, double most) {
        int[] options = offered.stream().mapToInt(Integer::intValue).toArray();
        return ExactPart.solve(
                problem,
                Scope.withoutDepots(problem),
                options,
                new int[0],
                new ExactPart.Limits(most, secondsLeft.getAsDouble(), 1, seed),
                CostScale.withoutOvertime(problem, options));
    }

    /** A bound where the solver found none in time: every truck at its least. */
    private double cheapestOfEach(List<Integer> offered) {
        TreeMap<Integer, Double> least = new TreeMap<>();
        for (int option : offered) {
            double most =
                    problem.must[problem.truckOf[option]] ? problem.cost[option] : Math.min(0, problem.cost[option]);
            least.merge(problem.truckOf[option], most, Math::min);
        }
        return least.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Options by duty group, in the order of the trucks; the choice of those without a group is made here. */
    private List<List<Integer>> groups() {
        TreeMap<String, List<Integer>> byGroup = new TreeMap<>();
        for (int truck = 0; truck < problem.truckCount(); truck++) {
            String group = problem.trucks.get(truck).dutyGroup();
            if (group == null) {
                takeCheapest(truck);
            } else {
                for (int option = problem.first[truck]; option < problem.first[truck + 1]; option++) {
                    byGroup.computeIfAbsent(group, none -> new ArrayList<>()).add(option);
                }
            }
        }
        return List.copyOf(byGroup.values());
    }

    private void takeCheapest(int truck) {
        int best = Assignment.NONE;
        for (int option = problem.first[truck]; option < problem.first[truck + 1]; option++) {
            boolean first = best == Assignment.NONE && (problem.must[truck] || problem.cost[option] < 0);
            if (first || best != Assignment.NONE && problem.cost[option] < problem.cost[best]) {
                best = option;
            }
        }
        if (best != Assignment.NONE) {
            chosen.add(best);
            bound += problem.cost[best];
        }
    }

    /** The groups' choices as far as the depots have room, those that gain most first, around what must stay. */
    Assignment schedule(Assignment start) {
        Assignment built = new Assignment(problem);
        chosen.stream()
                .sorted((one, other) -> Double.compare(problem.cost[one], problem.cost[other]))
                .filter(built::fits)
                .forEach(built::take);
        for (int truck = 0; truck < problem.truckCount(); truck++) {
            int its = start.choice(truck);
            if (problem.must[truck] && built.choice(truck) == Assignment.NONE && its != Assignment.NONE) {
                if (!built.fits(its)) {
                    return start;
                }
                built.take(its);
            }
        }
        built.fill();
        return built;
    }
}
