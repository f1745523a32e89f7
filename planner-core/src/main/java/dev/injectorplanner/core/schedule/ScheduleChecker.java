package dev.injectorplanner.core.schedule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Whether a schedule holds every limit of its request: at most one visit a truck, options that were offered, no truck
 * forgotten, pins and latest weeks, hours with overtime, bays and duty groups. Adds up the finished schedule and shares no code with schedulers.
 */
public final class ScheduleChecker {
    private static final double ROUNDING = 1e-6;

    private ScheduleChecker() {}

    /** What is wrong, in words; empty where all limits hold. */
    public static List<String> listViolations(ScheduleRequest request, Schedule schedule) {
        List<String> wrong = new ArrayList<>();
        Map<String, TruckOptions> asked = new LinkedHashMap<>();
        request.trucks().forEach(truck -> asked.put(truck.truck(), truck));
        Map<String, Double> hours = new TreeMap<>();
        Map<String, Double> depotDays = new TreeMap<>();
        Map<String, Double> groupDays = new TreeMap<>();
        Set<String> placed = new LinkedHashSet<>();
        Set<String> broken = new HashSet<>();
        schedule.brokenWishes().forEach(wish -> broken.add(wish.truck() + "\n" + wish.wish()));
        for (Schedule.Choice choice : schedule.choices()) {
            TruckOptions truck = asked.get(choice.truck());
            VisitOption option = choice.option();
            if (truck == null || !truck.options().contains(option)) {
                wrong.add("truck " + choice.truck() + ": an option that was not offered, week " + option.week());
                continue;
            }
            if (!placed.add(truck.truck())) {
                wrong.add("truck " + truck.truck() + ": two visits");
            }
            wishes(truck, option, broken, wrong);
            hours.merge(cell(truck.depot(), option.week()), option.labourHours(), Double::sum);
            depotDays.merge(cell(truck.depot(), option.week()), option.truckDays(), Double::sum);
            if (truck.dutyGroup() != null) {
                groupDays.merge(cell(truck.dutyGroup(), option.week()), option.truckDays(), Double::sum);
            }
        }
        forgotten(asked.keySet(), placed, schedule, wrong);
        if (schedule.stop() != Schedule.Stop.RULE) {
            silent(request, placed, schedule, wrong);
        }
        limits(request, hours, depotDays, groupDays, wrong);
        return wrong;
    }

    /** A wish is kept, or the schedule owns up to having broken it. */
    private static void wishes(TruckOptions truck, VisitOption option, Set<String> broken, List<String> wrong) {
        Integer latest = truck.latestWeek();
        if (latest != null
                && option.week() > latest
                && !broken.contains(truck.truck() + "\n" + Schedule.Wish.LATEST_WEEK)) {
            wrong.add("truck " + truck.truck() + ": week " + option.week() + " is after its latest, " + latest);
        }
        Integer pinned = truck.pinnedWeek();
        if (pinned != null && option.week() != pinned && !broken.contains(truck.truck() + "\n" + Schedule.Wish.PIN)) {
            wrong.add("truck " + truck.truck() + ": week " + option.week() + " is not the one it is pinned to, "
                    + pinned);
        }
    }

    private static void forgotten(Set<String> asked, Set<String> placed, Schedule schedule, List<String> wrong) {
        Set<String> answered = new LinkedHashSet<>(placed);
        for (Schedule.NotPlaced truck : schedule.notPlaced()) {
            if (!answered.add(truck.truck())) {
                wrong.add("truck " + truck.truck() + ": named twice, once as not placed");
            }
        }
        asked.stream()
                .filter(truck -> !answered.contains(truck))
                .forEach(truck -> wrong.add("truck " + truck + ": neither placed nor named as not placed"));
    }

    /** A search that leaves out a truck with a pin or latest week must say which limit forbids it. */
    private static void silent(ScheduleRequest request, Set<String> placed, Schedule schedule, List<String> wrong) {
        Set<String> told = new HashSet<>();
        schedule.brokenWishes().forEach(wish -> told.add(wish.truck()));
        request.trucks().stream()
                .filter(truck -> truck.hasWish() && !placed.contains(truck.truck()) && !told.contains(truck.truck()))
                .forEach(truck -> wrong.add("truck " + truck.truck()
                        + ": pinned or due, not placed, and not listed among the holds that cannot be kept"));
    }

    private static void limits(
            ScheduleRequest request,
            Map<String, Double> hours,
            Map<String, Double> depotDays,
            Map<String, Double> groupDays,
            List<String> wrong) {
        Map<String, Double> mostHours = new TreeMap<>();
        Map<String, Double> mostDays = new TreeMap<>();
        Map<String, Double> mostGroup = new TreeMap<>();
        for (WeekCapacity row : request.depots()) {
            mostHours.put(cell(row.depot(), row.week()), row.labourHours() + row.overtimeHours());
            mostDays.put(cell(row.depot(), row.week()), row.bayDays());
        }
        request.groups().forEach(row -> mostGroup.put(cell(row.dutyGroup(), row.week()), row.truckDays()));
        over("labour hours of depot ", hours, mostHours, wrong);
        over("bay-days of depot ", depotDays, mostDays, wrong);
        over("truck-days of duty group ", groupDays, mostGroup, wrong);
    }

    private static void over(String what, Map<String, Double> used, Map<String, Double> most, List<String> wrong) {
        used.forEach((cell, value) -> {
            double limit = most.getOrDefault(cell, 0.0);
            if (!(value <= limit + ROUNDING)) {
                wrong.add(what + cell + ": " + value + " booked, " + limit + " available");
            }
        });
    }

    private static String cell(String name, int week) {
        return name + ", week " + week;
    }
}
