package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.Schedule.BrokenWish;
import dev.injectorplanner.core.schedule.Schedule.Wish;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Settles which pins and latest weeks are kept, before any other truck is looked at (others need not come, so they are
 * never in the way): first as many latest weeks as possible, then as many pins, then those that cost least.
 */
final class Wishes {
    private static final double WORK = 5;

    private final List<TruckOptions> trucks = new ArrayList<>();
    private final Map<String, VisitOption> kept = new HashMap<>();
    private final List<BrokenWish> broken = new ArrayList<>();

    private Wishes() {}

    /** All trucks by name; those of kept wishes with only the options that keep them. */
    List<TruckOptions> trucks() {
        return trucks;
    }

    /** An option for each truck of a kept wish; they go together. */
    Map<String, VisitOption> kept() {
        return kept;
    }

    List<BrokenWish> broken() {
        return broken;
    }

    /** @param part trucks by name */
    static Wishes settle(ScheduleRequest part, SearchLimits limits, DoubleSupplier secondsLeft) {
        Wishes wishes = new Wishes();
        List<TruckOptions> asking =
                part.trucks().stream().filter(TruckOptions::hasWish).toList();
        if (asking.isEmpty()) {
            wishes.trucks.addAll(part.trucks());
            return wishes;
        }
        WishOptions options = new WishOptions(asking);
        List<WeekCapacity> free =
                part.depots().stream().map(Wishes::freeOvertime).toList();
        boolean[] must = new boolean[asking.size()];
        Problem problem = new Problem(options.trucks(), must, free, part.groups());
        int[] all = ExactScheduler.all(problem.options.length);
        ExactPart.Answer answer = ExactPart.solve(
                problem,
                Scope.whole(problem),
                all,
                new int[0],
                new ExactPart.Limits(WORK, secondsLeft.getAsDouble(), 1, (int) (limits.seed() & 0xFFFF)));
        Assignment chosen = new Assignment(problem);
        Arrays.stream(answer.chosen()).forEach(chosen::take);
        Map<String, TruckOptions> narrowed = new HashMap<>();
        for (int t = 0; t < asking.size(); t++) {
            int its = chosen.choice(t);
            VisitOption visit = its == Assignment.NONE ? null : options.original(t, problem.options[its]);
            narrowed.put(asking.get(t).truck(), wishes.narrow(asking.get(t), visit));
            for (Wish wish : wishes.brokenBy(asking.get(t), visit)) {
                wishes.broken.add(brokenWish(problem, chosen, t, wish, options));
            }
        }
        part.trucks().forEach(truck -> wishes.trucks.add(narrowed.getOrDefault(truck.truck(), truck)));
        return wishes;
    }

    private static WeekCapacity freeOvertime(WeekCapacity week) {
        return new WeekCapacity(week.depot(), week.week(), week.labourHours(), week.overtimeHours(), 0, week.bayDays());
    }

    private TruckOptions narrow(TruckOptions truck, @Nullable VisitOption visit) {
        if (visit == null) {
            return truck;
        }
        kept.put(truck.truck(), visit);
        List<VisitOption> keeping = truck.options().stream()
                .filter(option -> brokenBy(truck, visit).containsAll(brokenBy(truck, option)))
                .toList();
        return new TruckOptions(
                truck.truck(), truck.depot(), truck.dutyGroup(), keeping, truck.latestWeek(), truck.pinnedWeek());
    }

    private static List<Wish> brokenBy(TruckOptions truck, @Nullable VisitOption visit) {
        List<Wish> list = new ArrayList<>();
        for (Wish wish : Wish.values()) {
            if (WishOptions.asks(truck, wish) && (visit == null || !WishOptions.meets(truck, wish, visit))) {
                list.add(wish);
            }
        }
        return list;
    }

    private static BrokenWish brokenWish(Problem problem, Assignment chosen, int t, Wish wish, WishOptions options) {
        TruckOptions truck = options.asking(t);
        Integer pinned = truck.pinnedWeek();
        Integer latest = truck.latestWeek();
        int week = wish == Wish.PIN && pinned != null ? pinned : latest != null ? latest : 0;
        if (wish == Wish.PIN && latest != null && week > latest) {
            return new BrokenWish(truck.truck(), wish, week, "it must come in by week " + latest + " of the plan");
        }
        boolean offered = truck.options().stream().anyMatch(option -> WishOptions.meets(truck, wish, option));
        List<Integer> meeting = new ArrayList<>();
        for (int option = problem.first[t]; option < problem.first[t + 1]; option++) {
            if (WishOptions.meets(truck, wish, options.original(t, problem.options[option]))) {
                meeting.add(option);
            }
        }
        return new BrokenWish(truck.truck(), wish, week, Reasons.brokenWish(problem, chosen, t, offered, meeting));
    }

    /** An assignment that keeps the wishes and places nobody else. */
    Assignment start(Problem problem) {
        Assignment start = new Assignment(problem);
        for (int t = 0; t < problem.truckCount(); t++) {
            VisitOption visit = kept.get(problem.trucks.get(t).truck());
            for (int option = problem.first[t]; visit != null && option < problem.first[t + 1]; option++) {
                VisitOption other = problem.options[option];
                boolean noMore = other.week() == visit.week()
                        && other.labourHours() <= visit.labourHours()
                        && other.truckDays() <= visit.truckDays();
                if (noMore && start.fits(option)) {
                    start.take(option);
                    break;
                }
            }
        }
        return start;
    }
}
