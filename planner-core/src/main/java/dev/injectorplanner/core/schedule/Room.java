package dev.injectorplanner.core.schedule;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is left of every depot's and duty group's weeks while a schedule is built. */
final class Room {
    /** Hours and days are sums of decimals: this much may be lost in adding them. */
    static final double ROUNDING = 1e-9;

    private record Key(String name, int week) {}

    private static final class Left {
        double labourHours;
        double overtimeHours;
        double bayDays;
        double premium;
    }

    /** What stands in the way of an option. */
    enum Limit {
        LABOUR_HOURS("labour hours"),
        BAYS("bays"),
        DUTY_GROUP("trucks the duty group must keep on the road");

        final String words;

        Limit(String words) {
            this.words = words;
        }
    }

    private final Map<Key, Left> depots = new HashMap<>();
    private final Map<Key, Double> groups = new HashMap<>();

    Room(ScheduleRequest request) {
        for (WeekCapacity capacity : request.depots()) {
            Left left = new Left();
            left.labourHours = capacity.labourHours();
            left.overtimeHours = capacity.overtimeHours();
            left.bayDays = capacity.bayDays();
            left.premium = capacity.overtimePremium();
            depots.put(new Key(capacity.depot(), capacity.week()), left);
        }
        request.groups().forEach(group -> groups.put(new Key(group.dutyGroup(), group.week()), group.truckDays()));
    }

    /** The first limit that stands in the way, or null where there is room. */
    @Nullable
    Limit inTheWay(TruckOptions truck, VisitOption option, boolean overtime) {
        Left left = depots.get(new Key(truck.depot(), option.week()));
        double hours = left == null ? 0 : left.labourHours + (overtime ? left.overtimeHours : 0);
        if (option.labourHours() > hours + ROUNDING) {
            return Limit.LABOUR_HOURS;
        }
        if (option.truckDays() > (left == null ? 0 : left.bayDays) + ROUNDING) {
            return Limit.BAYS;
        }
        String group = truck.dutyGroup();
        boolean groupHasRoom = group == null
                || option.truckDays() <= groups.getOrDefault(new Key(group, option.week()), 0.0) + ROUNDING;
        return groupHasRoom ? null : Limit.DUTY_GROUP;
    }

    /**
     * Books an option that there is room for.
     *
     * @return what its overtime costs beyond plain hours
     */
    double book(TruckOptions truck, VisitOption option) {
        String group = truck.dutyGroup();
        if (group != null) {
            groups.merge(new Key(group, option.week()), -option.truckDays(), Double::sum);
        }
        Left left = depots.get(new Key(truck.depot(), option.week()));
        if (left == null) {
            return 0;
        }
        double plain = Math.min(option.labourHours(), Math.max(0, left.labourHours));
        double over = option.labourHours() - plain;
        left.labourHours -= plain;
        left.overtimeHours -= over;
        left.bayDays -= option.truckDays();
        return over * left.premium;
    }
}
