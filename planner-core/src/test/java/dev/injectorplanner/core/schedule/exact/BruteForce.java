package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.GroupCapacity;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tries every choice of a small request; shares nothing with the scheduler. */
final class BruteForce {
    private static final double ROUNDING = 1e-9;

    private final ScheduleRequest request;
    private final List<VisitOption> chosen = new ArrayList<>();
    private final Set<String> waived;
    private double best = Double.POSITIVE_INFINITY;
    private int mostLatest;
    private int mostPins;

    private BruteForce(ScheduleRequest request, Set<String> waived) {
        this.request = request;
        this.waived = waived;
    }

    /** The least cost of a schedule that keeps all wishes but the waived (truck, blank, PIN or LATEST_WEEK). */
    static double leastCost(ScheduleRequest request, Set<String> waived) {
        BruteForce search = new BruteForce(request, waived);
        search.from(0);
        return search.best;
    }

    /** How many latest weeks, and beside these how many pins, can be kept at most. */
    static int[] mostWishes(ScheduleRequest request) {
        Set<String> all = new java.util.HashSet<>();
        request.trucks().forEach(truck -> {
            all.add(truck.truck() + " PIN");
            all.add(truck.truck() + " LATEST_WEEK");
        });
        BruteForce search = new BruteForce(request, all);
        search.from(0);
        return new int[] {search.mostLatest, search.mostPins};
    }

    private void from(int truck) {
        if (truck == request.trucks().size()) {
            take();
            return;
        }
        TruckOptions asked = request.trucks().get(truck);
        List<VisitOption> ways = new ArrayList<>(asked.options());
        ways.add(null);
        for (VisitOption option : ways) {
            if (allowed(asked, option)) {
                chosen.add(option);
                from(truck + 1);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    private boolean allowed(TruckOptions truck, VisitOption option) {
        boolean latest = waived.contains(truck.truck() + " LATEST_WEEK") || keepsLatest(truck, option);
        return latest && (waived.contains(truck.truck() + " PIN") || keepsPin(truck, option));
    }

    private static boolean keepsLatest(TruckOptions truck, VisitOption option) {
        return truck.latestWeek() == null || (option != null && option.week() <= truck.latestWeek());
    }

    private static boolean keepsPin(TruckOptions truck, VisitOption option) {
        return truck.pinnedWeek() == null || (option != null && option.week() == truck.pinnedWeek());
    }

    private void take() {
        Map<String, double[]> sums = new HashMap<>();
        double cost = 0;
        int latest = 0;
        int pins = 0;
        for (int t = 0; t < chosen.size(); t++) {
            TruckOptions truck = request.trucks().get(t);
            VisitOption option = chosen.get(t);
            latest += truck.latestWeek() != null && keepsLatest(truck, option) ? 1 : 0;
            pins += truck.pinnedWeek() != null && keepsPin(truck, option) ? 1 : 0;
            if (option != null) {
                cost += option.cost();
                add(sums, truck.depot() + option.week(), option);
                add(sums, truck.dutyGroup() + option.week(), option);
            }
        }
        for (WeekCapacity week : request.depots()) {
            double[] used = sums.getOrDefault(week.depot() + week.week(), new double[2]);
            double over = Math.max(0, used[0] - week.labourHours());
            if (over > week.overtimeHours() + ROUNDING || used[1] > week.bayDays() + ROUNDING) {
                return;
            }
            cost += over * week.overtimePremium();
        }
        for (GroupCapacity group : request.groups()) {
            if (sums.getOrDefault(group.dutyGroup() + group.week(), new double[2])[1] > group.truckDays() + ROUNDING) {
                return;
            }
        }
        best = Math.min(best, cost);
        if (latest > mostLatest || (latest == mostLatest && pins > mostPins)) {
            mostLatest = latest;
            mostPins = pins;
        }
    }

    private static void add(Map<String, double[]> sums, String key, VisitOption option) {
        double[] used = sums.computeIfAbsent(key, none -> new double[2]);
        used[0] += option.labourHours();
        used[1] += option.truckDays();
    }
}
