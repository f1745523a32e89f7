package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.exact.CostOf;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Some depots of a request, with those that share a duty group with them, to be searched again by themselves. */
final class SharedDepots {
    private SharedDepots() {}

    static ScheduleRequest part(ScheduleRequest request, Set<String> depots) {
        Set<String> all = new HashSet<>(depots);
        Set<String> groups = new HashSet<>();
        boolean grew = true;
        while (grew) {
            int before = all.size() + groups.size();
            for (TruckOptions truck : request.trucks()) {
                String group = truck.dutyGroup();
                if (group != null && (all.contains(truck.depot()) || groups.contains(group))) {
                    groups.add(group);
                    all.add(truck.depot());
                }
            }
            grew = all.size() + groups.size() > before;
        }
        return new ScheduleRequest(
                request.weeks(),
                request.trucks().stream()
                        .filter(truck -> all.contains(truck.depot()))
                        .toList(),
                request.depots().stream()
                        .filter(row -> all.contains(row.depot()))
                        .toList(),
                request.groups().stream()
                        .filter(row -> groups.contains(row.dutyGroup()))
                        .toList());
    }

    /** A schedule's choices of some trucks. */
    static Schedule only(Schedule schedule, Set<String> trucks) {
        return new Schedule(
                of(schedule.choices(), Schedule.Choice::truck, trucks, true),
                of(schedule.notPlaced(), Schedule.NotPlaced::truck, trucks, true),
                schedule.cost(),
                null,
                of(schedule.brokenWishes(), Schedule.BrokenWish::truck, trucks, true),
                schedule.stop());
    }

    /** One schedule for some trucks, another for the rest; choices in the order of the request. */
    static Schedule together(ScheduleRequest request, Schedule rest, Schedule found, Set<String> trucks) {
        List<Schedule.Choice> choices = new ArrayList<>(of(rest.choices(), Schedule.Choice::truck, trucks, false));
        choices.addAll(found.choices());
        Map<String, Integer> place = new HashMap<>();
        request.trucks().forEach(truck -> place.put(truck.truck(), place.size()));
        choices.sort((one, other) ->
                Integer.compare(place.getOrDefault(one.truck(), 0), place.getOrDefault(other.truck(), 0)));
        List<Schedule.NotPlaced> notPlaced =
                new ArrayList<>(of(rest.notPlaced(), Schedule.NotPlaced::truck, trucks, false));
        notPlaced.addAll(found.notPlaced());
        List<Schedule.BrokenWish> broken =
                new ArrayList<>(of(rest.brokenWishes(), Schedule.BrokenWish::truck, trucks, false));
        broken.addAll(found.brokenWishes());
        return new Schedule(choices, notPlaced, CostOf.schedule(request, choices), null, broken, rest.stop());
    }

    private static <R> List<R> of(List<R> rows, Function<R, String> truck, Set<String> trucks, boolean within) {
        return rows.stream()
                .filter(row -> trucks.contains(truck.apply(row)) == within)
                .toList();
    }
}
