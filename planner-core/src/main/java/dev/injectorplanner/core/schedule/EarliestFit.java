package dev.injectorplanner.core.schedule;

import static java.util.Comparator.comparingDouble;
import static java.util.Comparator.comparingInt;

import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The first way of scheduling: trucks one after the other in the order given, the most pressing first, each into its
 * earliest week with room in hours, bays and duty group. Overtime is used where no plain hours are left in a week that
 * is in time, that is, whose option costs nothing or less; a late truck takes the earliest week, with overtime where it
 * must. Proves no bound.
 */
public final class EarliestFit implements VisitScheduler {
    @Override
    public Schedule schedule(ScheduleRequest request) {
        Room room = new Room(request);
        List<Schedule.Choice> choices = new ArrayList<>();
        List<Schedule.NotPlaced> notPlaced = new ArrayList<>();
        double cost = 0;
        for (TruckOptions truck : request.trucks()) {
            VisitOption chosen = choose(truck, room);
            if (chosen == null) {
                notPlaced.add(new Schedule.NotPlaced(truck.truck(), reason(truck, room)));
            } else {
                cost += chosen.cost() + room.book(truck, chosen);
                choices.add(new Schedule.Choice(truck.truck(), chosen));
            }
        }
        return new Schedule(choices, notPlaced, cost, null);
    }

    private static List<VisitOption> byWeek(TruckOptions truck) {
        return truck.options().stream()
                .filter(truck::meetsWish)
                .sorted(comparingInt(VisitOption::week).thenComparing(comparingDouble(VisitOption::cost)))
                .toList();
    }

    private static @Nullable VisitOption choose(TruckOptions truck, Room room) {
        List<VisitOption> options = byWeek(truck);
        for (boolean overtime : new boolean[] {false, true}) {
            for (VisitOption option : options) {
                if (option.cost() <= 0 && room.inTheWay(truck, option, overtime) == null) {
                    return option;
                }
            }
        }
        for (VisitOption option : options) {
            if (option.cost() > 0 && room.inTheWay(truck, option, true) == null) {
                return option;
            }
        }
        return null;
    }

    private static String reason(TruckOptions truck, Room room) {
        Map<Room.Limit, Integer> limits = new EnumMap<>(Room.Limit.class);
        List<VisitOption> options = byWeek(truck);
        if (options.isEmpty()) {
            return "it cannot be spared in any week of the plan";
        }
        for (VisitOption option : options) {
            Room.Limit limit = room.inTheWay(truck, option, true);
            if (limit != null) {
                limits.merge(limit, 1, Integer::sum);
            }
        }
        String tried = limits.entrySet().stream()
                .map(entry -> entry.getKey().words + " in " + entry.getValue())
                .collect(Collectors.joining(", "));
        return "no room in any of the " + Figures.count(options.size(), "week", "weeks")
                + " it could come in; limited by: " + tried;
    }
}
