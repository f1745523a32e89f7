package dev.injectorplanner.core.schedule;

import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a finished schedule takes of every depot's and duty group's weeks, and whether another visit would find room. */
public final class Booked {
    private static final double ROUNDING = 1e-6;

    private record Key(String name, int week) {}

    private final Map<Key, WeekCapacity> depots = new HashMap<>();
    private final Map<Key, Double> groups = new HashMap<>();
    private final Map<Key, Double> hours = new LinkedHashMap<>();
    private final Map<Key, Double> bayDays = new HashMap<>();
    private final Map<Key, Double> groupDays = new HashMap<>();
    private final Map<Key, List<String>> trucks = new HashMap<>();
    private final Map<String, VisitOption> chosen = new LinkedHashMap<>();

    public Booked(ScheduleRequest request, Schedule schedule) {
        request.depots().forEach(row -> depots.put(new Key(row.depot(), row.week()), row));
        request.groups().forEach(row -> groups.put(new Key(row.dutyGroup(), row.week()), row.truckDays()));
        Map<String, TruckOptions> asked = new HashMap<>();
        request.trucks().forEach(truck -> asked.put(truck.truck(), truck));
        for (Schedule.Choice choice : schedule.choices()) {
            TruckOptions truck = asked.get(choice.truck());
            if (truck != null) {
                add(truck, choice.option());
            }
        }
    }

    /** Takes one more visit, of a truck that has none yet. */
    public void add(TruckOptions truck, VisitOption option) {
        chosen.put(truck.truck(), option);
        book(truck, option);
    }

    private void book(TruckOptions truck, VisitOption option) {
        Key cell = new Key(truck.depot(), option.week());
        hours.merge(cell, option.labourHours(), Double::sum);
        bayDays.merge(cell, option.truckDays(), Double::sum);
        trucks.computeIfAbsent(cell, none -> new ArrayList<>()).add(truck.truck());
        if (truck.dutyGroup() != null) {
            groupDays.merge(new Key(truck.dutyGroup(), option.week()), option.truckDays(), Double::sum);
        }
    }

    /** Trucks with a visit at a depot in a week, in the order of the schedule. */
    public List<String> trucksOf(String depot, int week) {
        return List.copyOf(trucks.getOrDefault(new Key(depot, week), List.of()));
    }

    /** The limit that a visit breaks even in an empty week, in words with figures; null where it fits. */
    public @Nullable String limitAlone(TruckOptions truck, VisitOption option) {
        WeekCapacity there = depots.get(new Key(truck.depot(), option.week()));
        double most = there == null ? 0 : there.labourHours() + there.overtimeHours();
        if (option.labourHours() > most + ROUNDING) {
            return "it takes at least " + Figures.hours(option.labourHours()) + ", the week has " + Figures.hours(most)
                    + " with overtime";
        }
        double bays = there == null ? 0 : there.bayDays();
        if (option.truckDays() > bays + ROUNDING) {
            return "it needs a bay for " + days(option.truckDays()) + ", the week has " + days(bays);
        }
        String group = truck.dutyGroup();
        double spare = group == null ? 0 : groups.getOrDefault(new Key(group, option.week()), 0.0);
        return group == null || option.truckDays() <= spare + ROUNDING
                ? null
                : "it is off the road for " + days(option.truckDays()) + ", duty group " + group + " can spare "
                        + days(spare) + " that week";
    }

    /** The limit that leaves no room for a visit beside those of other trucks, in words with figures; null where it fits. */
    public @Nullable String limitBeside(TruckOptions truck, VisitOption option) {
        String alone = limitAlone(truck, option);
        WeekCapacity there = depots.get(new Key(truck.depot(), option.week()));
        if (alone != null || there == null) {
            return alone;
        }
        double used = hoursBut(truck, option.week());
        double most = there.labourHours() + there.overtimeHours();
        if (used + option.labourHours() > most + ROUNDING) {
            return "no labour hours free: " + Figures.tenths(used) + " of " + Figures.hours(most) + " are booked";
        }
        Key cell = new Key(truck.depot(), option.week());
        double bays = bayDays.getOrDefault(cell, 0.0) - (ownIn(truck, option.week(), true));
        if (bays + option.truckDays() > there.bayDays() + ROUNDING) {
            return "no bay free: " + Figures.tenths(bays) + " of " + Figures.tenths(there.bayDays())
                    + " bay-days are booked";
        }
        return groupBeside(truck, option);
    }

    private @Nullable String groupBeside(TruckOptions truck, VisitOption option) {
        String group = truck.dutyGroup();
        if (group == null) {
            return null;
        }
        Key cell = new Key(group, option.week());
        double spare = groups.getOrDefault(cell, 0.0);
        double used = groupDays.getOrDefault(cell, 0.0) - ownIn(truck, option.week(), true);
        return used + option.truckDays() <= spare + ROUNDING
                ? null
                : "duty group " + group + " can spare no more: " + Figures.tenths(used) + " of " + Figures.tenths(spare)
                        + " truck-days are booked";
    }

    /** What overtime costs more if a truck's visit moves to an option of another week, or comes into it. */
    public double overtimeOfMove(TruckOptions truck, VisitOption to) {
        VisitOption now = chosen.get(truck.truck());
        double change = 0;
        if (now != null && now.week() != to.week()) {
            double without = hoursBut(truck, now.week());
            change -= overtime(truck.depot(), now.week(), without + now.labourHours())
                    - overtime(truck.depot(), now.week(), without);
        }
        double others = hoursBut(truck, to.week());
        double before = others + ownIn(truck, to.week(), false);
        return change
                + overtime(truck.depot(), to.week(), others + to.labourHours())
                - overtime(truck.depot(), to.week(), before);
    }

    /** What the schedule costs: its options, and overtime beyond plain hours. */
    public double cost() {
        double sum = chosen.values().stream().mapToDouble(VisitOption::cost).sum();
        for (Map.Entry<Key, Double> cell : hours.entrySet()) {
            sum += overtime(cell.getKey().name(), cell.getKey().week(), cell.getValue());
        }
        return sum;
    }

    private double overtime(String depot, int week, double booked) {
        WeekCapacity there = depots.get(new Key(depot, week));
        return there == null ? 0 : Math.max(0, booked - there.labourHours()) * there.overtimePremium();
    }

    private double hoursBut(TruckOptions truck, int week) {
        return hours.getOrDefault(new Key(truck.depot(), week), 0.0) - ownIn(truck, week, false);
    }

    private double ownIn(TruckOptions truck, int week, boolean days) {
        VisitOption own = chosen.get(truck.truck());
        return own == null || own.week() != week ? 0 : days ? own.truckDays() : own.labourHours();
    }

    private static String days(double days) {
        return Figures.tenths(days) + (days == 1 ? " day" : " days");
    }
}
