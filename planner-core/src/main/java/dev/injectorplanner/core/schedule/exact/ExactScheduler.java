package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.Schedule.Stop;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.VisitScheduler;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;

/**
 * Searches for the cheapest schedule and proves how far from the best it may be. First come the wishes: as many latest
 * weeks as limits allow, then as many pins; then, with those kept, the least cost. The same request and limits give the
 * same schedule whatever the order of the trucks and the number of threads, unless the clock stops it.
 *
 * <p>Hours are counted in hundredths. Where hours are finer, a visit is counted at most a hundredth longer, and the bound
 * is still a bound.
 */
public final class ExactScheduler implements VisitScheduler {
    private final SearchLimits limits;
    private final DoubleSupplier secondsLeft;

    /** A scheduler that only the work limits stop. */
    public ExactScheduler(SearchLimits limits) {
        this(limits, () -> Double.POSITIVE_INFINITY);
    }

    /** @param secondsLeft a last safety: the search stops soon after this is no longer above 0 */
    public ExactScheduler(SearchLimits limits, DoubleSupplier secondsLeft) {
        this.limits = limits;
        this.secondsLeft = secondsLeft;
    }

    @Override
    public Schedule schedule(ScheduleRequest request) {
        return schedule(request, Map.of(), limits);
    }

    /** Starts from the other schedule's choices, so that a search changes only what it can better or must. */
    @Override
    public Schedule schedule(ScheduleRequest request, Schedule near) {
        return schedule(request, choices(near), limits);
    }

    @Override
    public Schedule reschedule(ScheduleRequest request, Schedule from) {
        return schedule(request, choices(from), limits.shorter());
    }

    private static Map<String, VisitOption> choices(Schedule near) {
        Map<String, VisitOption> start = new HashMap<>();
        near.choices().forEach(choice -> start.put(choice.truck(), choice.option()));
        return start;
    }

    private Schedule schedule(ScheduleRequest request, Map<String, VisitOption> near, SearchLimits limits) {
        List<ScheduleRequest> parts = IndependentParts.of(request);
        Part[] done = new Part[parts.size()];
        boolean apart = parts.size() > 1;
        SearchLimits each = limits.forEachOf(parts.size());
        try (Workers outer = new Workers(apart ? limits.threads() : 1)) {
            outer.forEach(parts.size(), (i, worker) -> {
                try (Workers inner = new Workers(apart ? 1 : limits.threads())) {
                    done[i] = solve(parts.get(i), near, each, inner);
                }
            });
        }
        return together(request, List.of(done));
    }

    private record Part(
            Map<String, VisitOption> chosen,
            Map<String, String> reasons,
            List<Schedule.BrokenWish> broken,
            double bound,
            Stop stop) {}

    private Part solve(ScheduleRequest part, Map<String, VisitOption> near, SearchLimits each, Workers workers) {
        Wishes wishes = Wishes.settle(part, each, secondsLeft);
        List<TruckOptions> trucks = wishes.trucks();
        boolean[] must = new boolean[trucks.size()];
        for (int t = 0; t < must.length; t++) {
            must[t] = wishes.kept().containsKey(trucks.get(t).truck());
        }
        Problem problem = new Problem(trucks, must, part.depots(), part.groups());
        Assignment start = wishes.start(problem);
        Search.Result result = new Search(problem, start, each, workers, secondsLeft).run(near(problem, start, near));
        Map<String, VisitOption> chosen = new HashMap<>();
        Map<String, String> reasons = new HashMap<>();
        for (int t = 0; t < trucks.size(); t++) {
            int option = result.best().choice(t);
            if (option == Assignment.NONE) {
                reasons.put(trucks.get(t).truck(), Reasons.notPlaced(problem, result.best(), t));
            } else {
                chosen.put(trucks.get(t).truck(), problem.options[option]);
            }
        }
        return new Part(chosen, reasons, wishes.broken(), result.bound(), result.stop());
    }

    /** The choices of another schedule as far as they fit around what must be; empty trucks where they do not. */
    private static Assignment near(Problem problem, Assignment start, Map<String, VisitOption> choices) {
        Assignment built = start.copy();
        for (int t = 0; t < problem.truckCount() && !choices.isEmpty(); t++) {
            VisitOption other = choices.get(problem.trucks.get(t).truck());
            for (int option = problem.first[t]; other != null && option < problem.first[t + 1]; option++) {
                if (sameWork(problem.options[option], other) && built.choice(t) != option) {
                    int now = built.choice(t);
                    built.drop(t);
                    int taken = built.fits(option) ? option : now;
                    if (taken != Assignment.NONE) {
                        built.take(taken);
                    }
                }
            }
        }
        return built;
    }

    private static boolean sameWork(VisitOption one, VisitOption other) {
        return one.week() == other.week()
                && one.cylinders().equals(other.cylinders())
                && one.labourHours() == other.labourHours();
    }

    private static Schedule together(ScheduleRequest request, List<Part> parts) {
        Map<String, VisitOption> chosen = new HashMap<>();
        Map<String, String> reasons = new HashMap<>();
        List<Schedule.BrokenWish> broken = new ArrayList<>();
        double bound = 0;
        Stop stop = Stop.PROVEN;
        for (Part part : parts) {
            chosen.putAll(part.chosen());
            reasons.putAll(part.reasons());
            broken.addAll(part.broken());
            bound += part.bound();
            stop = part.stop().compareTo(stop) > 0 ? part.stop() : stop;
        }
        List<Schedule.Choice> choices = new ArrayList<>();
        List<Schedule.NotPlaced> notPlaced = new ArrayList<>();
        for (TruckOptions truck : request.trucks()) {
            VisitOption option = chosen.get(truck.truck());
            if (option != null) {
                choices.add(new Schedule.Choice(truck.truck(), option));
            } else {
                notPlaced.add(new Schedule.NotPlaced(
                        truck.truck(),
                        reasons.getOrDefault(truck.truck(), "its depot has no working week in the plan")));
            }
        }
        double cost = CostOf.schedule(request, choices);
        return new Schedule(choices, notPlaced, cost, Math.min(bound, cost), broken, stop);
    }

    static int[] all(int count) {
        int[] all = new int[count];
        Arrays.setAll(all, i -> i);
        return all;
    }
}
