package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.Schedule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * The search for one independent part: bound, dives, then neighbourhoods in rounds of a fixed number of attempts, so
 * that the answer does not depend on the number of threads.
 */
final class Search {
    /** Steps a unit of work counts. */
    private static final double STEPS_PER_WORK = 2e9;

    private static final int BLOCK = 50;
    private static final int MOST_BLOCKS = 60;
    private static final int LEAST_BLOCKS = 4;
    private static final double BOUND_SHARE = 0.35;
    private static final double STALLED = 1e-5;
    private static final double AIM = 0.0005;
    private static final int ATTEMPTS = 8;
    private static final int PATIENCE = 25;
    private static final int[] FIRST_STEPS = {1, 3, 3, 8};
    private static final int SMALL = 2_500;
    private static final double SMALL_WORK = 4;
    private static final double PROVEN = 1e-9;

    private final Problem problem;
    private final SearchLimits limits;
    private final DoubleSupplier secondsLeft;
    private final Workers workers;
    private final Relaxation relaxation;
    private final Improver[] improvers;
    private Assignment best;
    private double cost;
    private double bound = Double.NEGATIVE_INFINITY;
    private boolean clock;
    private long otherWork;

    /**
     * @param start a schedule that keeps all limits and places all trucks that must be
     * @param secondsLeft until the clock stops the search
     */
    Search(Problem problem, Assignment start, SearchLimits limits, Workers workers, DoubleSupplier secondsLeft) {
        this.problem = problem;
        this.limits = limits;
        this.workers = workers;
        this.secondsLeft = secondsLeft;
        this.relaxation = new Relaxation(problem, workers, problem.low);
        this.improvers = new Improver[workers.count()];
        Arrays.setAll(improvers, worker -> new Improver(problem));
        this.best = start;
        this.cost = start.cost();
    }

    /**
     * What was found.
     *
     * @param best the schedule
     * @param bound proven lower bound of the cost
     */
    record Result(Assignment best, double bound, Schedule.Stop stop) {}

    /** @param near another schedule to start from, where it is better than filling up; the start itself where there is none */
    Result run(Assignment near) {
        Assignment filled = best.copy();
        filled.fill();
        Assignment kept = near.copy();
        kept.fill();
        offer(filled);
        offer(kept);
        if (problem.groupDays.length > 0) {
            byGroups();
        }
        if (enough()) {
            return new Result(best, bound, Schedule.Stop.PROVEN);
        }
        BoundSearch search = new BoundSearch(problem, relaxation, Scope.whole(problem), StartPrices.of(problem));
        findBound(search);
        Multipliers at = search.best();
        if (!enough()) {
            attempt(FIRST_STEPS.length, (i, improver) -> improver.whole(best, at, FIRST_STEPS[i], seed(0, i)));
        }
        if (!enough() && problem.options.length <= SMALL) {
            solveWhole();
        }
        if (!enough() && problem.options.length > 0) {
            improve(at, relaxation.prices());
        }
        Schedule.Stop stop = enough() ? Schedule.Stop.PROVEN : clock ? Schedule.Stop.CLOCK : Schedule.Stop.WORK_LIMIT;
        return new Result(best, bound, stop);
    }

    private void byGroups() {
        GroupBound groups = new GroupBound(problem, (int) (limits.seed() & 0xFFFF), secondsLeft).solve(workers);
        otherWork += (long) (groups.work() * STEPS_PER_WORK);
        raise(groups.bound());
        offer(groups.schedule(best));
    }

    private void findBound(BoundSearch search) {
        search.run(1, 0);
        for (int block = 0; block < MOST_BLOCKS && goesOn(BOUND_SHARE); block++) {
            double before = search.bound();
            search.run(BLOCK, search.bound() + AIM * Math.abs(search.bound()));
            raise(search.bound());
            boolean stalled = block >= LEAST_BLOCKS && search.bound() - before <= STALLED * Math.abs(before);
            if (stalled || enough()) {
                break;
            }
        }
        raise(search.bound());
    }

    private void solveWhole() {
        int[] all = new int[problem.options.length];
        Arrays.setAll(all, option -> option);
        boolean[] everywhere = new boolean[problem.cells.length];
        Arrays.fill(everywhere, true);
        ExactPart.Answer answer = ExactPart.solve(
                problem,
                Scope.whole(problem),
                all,
                best.chosenIn(everywhere).stream().mapToInt(Integer::intValue).toArray(),
                new ExactPart.Limits(
                        Math.min(SMALL_WORK, limits.work() / 2),
                        secondsLeft.getAsDouble(),
                        2,
                        (int) (limits.seed() & 0xFFFF),
                        limits.enoughGap() / 2));
        otherWork += (long) (answer.work() * STEPS_PER_WORK);
        raise(answer.bound());
        if (answer.found()) {
            Assignment found = new Assignment(problem);
            for (int option : answer.chosen()) {
                found.take(option);
            }
            offer(found);
        }
    }

    private void improve(Multipliers at, double[] prices) {
        int idle = 0;
        for (int round = 1; goesOn(1) && !enough(); round++) {
            int now = round;
            Assignment from = best;
            boolean exact = idle > 0 && idle % PATIENCE == 0;
            attempt(
                    ATTEMPTS,
                    (i, improver) -> exact && i == 0
                            ? improver.byExactPart(from, at, prices, seed(now, i), secondsLeft.getAsDouble())
                            : improver.byDive(from, at, i % 2 == 1, seed(now, i)));
            idle = best == from ? idle + 1 : 0;
        }
    }

    private interface Attempt {
        Assignment make(int i, Improver improver);
    }

    /** Makes attempts from the same schedule and keeps what they improve, also together where they go together. */
    private void attempt(int count, Attempt attempt) {
        Assignment from = best;
        Assignment[] made = new Assignment[count];
        workers.forEach(count, (i, worker) -> made[i] = attempt.make(i, improvers[worker]));
        List<Assignment> better = new ArrayList<>();
        for (Assignment one : made) {
            if (one.cost() < from.cost() - PROVEN) {
                better.add(one);
                offer(one);
            }
        }
        for (Assignment one : better) {
            offer(best.with(from, one));
        }
    }

    private void offer(Assignment candidate) {
        double its = candidate.cost();
        if (its < cost - PROVEN && placesAllThatMust(candidate)) {
            best = candidate;
            cost = its;
        }
    }

    private boolean placesAllThatMust(Assignment candidate) {
        for (int truck = 0; truck < problem.truckCount(); truck++) {
            if (problem.must[truck] && candidate.choice(truck) == Assignment.NONE) {
                return false;
            }
        }
        return true;
    }

    private void raise(double proven) {
        bound = Math.max(bound, proven);
    }

    private boolean enough() {
        return cost - bound <= Math.max(PROVEN, limits.enoughGap() * Math.abs(cost));
    }

    private boolean goesOn(double share) {
        long done = relaxation.work() + otherWork;
        for (Improver improver : improvers) {
            done += improver.work();
        }
        clock |= secondsLeft.getAsDouble() <= 0;
        return !clock && done < share * limits.work() * STEPS_PER_WORK;
    }

    private long seed(int round, int attempt) {
        return limits.seed() * 1_000_003L + round * 64L + attempt;
    }
}
