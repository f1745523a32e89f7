package dev.injectorplanner.core.schedule;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Hours, bay-days and working days of every depot and week, from its usual days and the overrides. Of the first week
 * only the days from today on count, and its overtime shrinks with them.
 */
public final class CapacityCalendar {
    private final FleetIndex index;
    private final LocalDate today;
    private final IsoWeek firstWeek;
    private final int weeks;
    private final Map<String, Map<LocalDate, CapacityOverride>> overrides = new HashMap<>();

    private final List<ExtraCapacity> extra;
    private final Map<String, LocalDate> offRoadUntil;

    public CapacityCalendar(FleetIndex index, LocalDate today, int weeks) {
        this(index, today, weeks, List.of());
    }

    /** @param extra hours and bays on top, spread over the days on which a depot works */
    public CapacityCalendar(FleetIndex index, LocalDate today, int weeks, List<ExtraCapacity> extra) {
        this(index, today, weeks, extra, Map.of());
    }

    private CapacityCalendar(
            FleetIndex index,
            LocalDate today,
            int weeks,
            List<ExtraCapacity> extra,
            Map<String, LocalDate> offRoadUntil) {
        this.index = index;
        this.today = today;
        this.firstWeek = IsoWeek.of(today);
        this.weeks = weeks;
        this.extra = List.copyOf(extra);
        this.offRoadUntil = Map.copyOf(offRoadUntil);
        for (CapacityOverride row : index.fleet().capacity()) {
            overrides.computeIfAbsent(row.depot(), depot -> new HashMap<>()).put(row.date(), row);
        }
    }

    /**
     * The same, with trucks that must not be driven counted as off the road.
     *
     * @param until truck and the last day on which it is
     */
    public CapacityCalendar withOffRoad(Map<String, LocalDate> until) {
        return new CapacityCalendar(index, today, weeks, extra, until);
    }

    /** Capacity by depot, then week. */
    public List<WeekCapacity> depotCapacity() {
        List<WeekCapacity> rows = new ArrayList<>();
        for (Depot depot : index.fleet().depots()) {
            for (int week = 0; week < weeks; week++) {
                rows.add(capacity(depot, week));
            }
        }
        return rows;
    }

    private WeekCapacity capacity(Depot depot, int week) {
        double hours = 0;
        double bayDays = 0;
        int open = 0;
        int usual = 0;
        for (LocalDate day : days(week, firstWeek.monday())) {
            usual += depot.workDays().contains(day.getDayOfWeek()) ? 1 : 0;
            if (!day.isBefore(today)) {
                hours += hoursOn(depot, day);
                bayDays += baysOn(depot, day);
                open += worksOn(depot, day) ? 1 : 0;
            }
        }
        double overtime = depot.overtimeHoursPerWeek() * Math.min(1, open / (double) usual);
        hours += open > 0 ? extraHours(depot, week) : 0;
        bayDays += (double) open * extraBays(depot, week);
        double premium = depot.overtimePerHour().subtract(depot.labourPerHour()).doubleValue();
        return new WeekCapacity(depot.depot(), week, hours, overtime, Math.max(0, premium), bayDays);
    }

    /** The days of a week, from today on, on which a depot works. */
    public List<OpenDay> openDays(Depot depot, int week) {
        List<LocalDate> open = days(week, firstWeek.monday()).stream()
                .filter(day -> !day.isBefore(today) && worksOn(depot, day))
                .toList();
        double hours = open.isEmpty() ? 0 : extraHours(depot, week) / open.size();
        int bays = extraBays(depot, week);
        return open.stream()
                .map(day -> new OpenDay(day, hoursOn(depot, day) + hours, baysOn(depot, day) + bays))
                .toList();
    }

    private Stream<ExtraCapacity> extra(Depot depot, int week) {
        return extra.stream()
                .filter(row -> row.depot().equals(depot.depot()) && firstWeek.weeksUntil(row.week()) == week);
    }

    private double extraHours(Depot depot, int week) {
        return extra(depot, week).mapToDouble(ExtraCapacity::labourHours).sum();
    }

    private int extraBays(Depot depot, int week) {
        return extra(depot, week).mapToInt(ExtraCapacity::bays).sum();
    }

    private static List<LocalDate> days(int week, LocalDate firstMonday) {
        LocalDate monday = firstMonday.plusWeeks(week);
        return monday.datesUntil(monday.plusDays(7)).toList();
    }

    private double hoursOn(Depot depot, LocalDate day) {
        CapacityOverride row = overrideOn(depot, day);
        return row != null ? row.labourHours() : usual(depot, day) ? depot.labourHoursPerDay() : 0;
    }

    private int baysOn(Depot depot, LocalDate day) {
        CapacityOverride row = overrideOn(depot, day);
        return row != null ? row.bays() : usual(depot, day) ? depot.bays() : 0;
    }

    private boolean worksOn(Depot depot, LocalDate day) {
        return hoursOn(depot, day) > 0 && baysOn(depot, day) > 0;
    }

    private static boolean usual(Depot depot, LocalDate day) {
        return depot.workDays().contains(day.getDayOfWeek());
    }

    private @Nullable CapacityOverride overrideOn(Depot depot, LocalDate day) {
        return overrides.getOrDefault(depot.depot(), Map.of()).get(day);
    }

    /**
     * Truck-days of every duty group and week: trucks in service above the minimum on the road, for each day from today
     * on that a depot of the group works.
     */
    public List<GroupCapacity> groupCapacity() {
        List<GroupCapacity> rows = new ArrayList<>();
        Map<String, Map<LocalDate, Integer>> spare = groupSpare(weeks);
        for (DutyGroup group : index.fleet().dutyGroups()) {
            for (int week = 0; week < weeks; week++) {
                IsoWeek of = firstWeek.plus(week);
                double sum = spare.getOrDefault(group.dutyGroup(), Map.of()).entrySet().stream()
                        .filter(day -> IsoWeek.of(day.getKey()).equals(of))
                        .mapToInt(Map.Entry::getValue)
                        .sum();
                rows.add(new GroupCapacity(group.dutyGroup(), week, sum));
            }
        }
        return rows;
    }

    /**
     * Trucks of each duty group that may be in a bay on a day: those in service that may be driven, above the minimum on the
     * road, for each day from today on that a depot of the group works.
     *
     * @param first this many weeks, from the plan's first
     */
    public Map<String, Map<LocalDate, Integer>> groupSpare(int first) {
        Map<String, List<Truck>> members = new HashMap<>();
        for (Truck truck : index.fleet().trucks()) {
            if (truck.dutyGroup() != null) {
                members.computeIfAbsent(truck.dutyGroup(), group -> new ArrayList<>())
                        .add(truck);
            }
        }
        Map<String, Map<LocalDate, Integer>> all = new TreeMap<>();
        for (DutyGroup group : index.fleet().dutyGroups()) {
            List<Truck> trucks = members.getOrDefault(group.dutyGroup(), List.of());
            Set<String> depots = new TreeSet<>(trucks.stream().map(Truck::depot).toList());
            Map<LocalDate, Integer> days = new TreeMap<>();
            for (LocalDate day = today; IsoWeek.of(day).compareTo(firstWeek.plus(first)) < 0; day = day.plusDays(1)) {
                LocalDate on = day;
                if (depots.stream().anyMatch(depot -> worksOn(index.depot(depot), on))) {
                    long serving = trucks.stream()
                            .filter(truck -> truck.inServiceAt(on) && mayBeDriven(truck, on))
                            .count();
                    days.put(day, (int) Math.max(0, serving - group.minimumOnRoad()));
                }
            }
            all.put(group.dutyGroup(), days);
        }
        return all;
    }

    private boolean mayBeDriven(Truck truck, LocalDate day) {
        LocalDate until = offRoadUntil.get(truck.truck());
        return until == null || day.isAfter(until);
    }

    /** Days of a week, from today on, on which a truck's depot works and the truck is in the fleet and not away. */
    public int daysFree(Truck truck, int week) {
        return daysFree(truck, week, LocalDate.MIN);
    }

    /** The same, of days after a day. */
    public int daysFree(Truck truck, int week, LocalDate after) {
        return (int)
                freeDays(truck, week).stream().filter(day -> day.isAfter(after)).count();
    }

    /** The last of those days on which a visit of that many days can start; null where they are too few. */
    public @Nullable LocalDate lastStart(Truck truck, int week, double truckDays) {
        List<LocalDate> free = freeDays(truck, week);
        int at = free.size() - Math.max(1, (int) Math.ceil(truckDays - 1e-9));
        return at < 0 ? null : free.get(at);
    }

    private List<LocalDate> freeDays(Truck truck, int week) {
        Depot depot = index.depot(truck.depot());
        List<AwayWindow> away = index.awayOf(truck.truck());
        List<LocalDate> free = new ArrayList<>(7);
        for (LocalDate day : days(week, firstWeek.monday())) {
            if (!day.isBefore(today)
                    && truck.inServiceAt(day)
                    && worksOn(depot, day)
                    && away.stream().noneMatch(window -> window.touches(day, day))) {
                free.add(day);
            }
        }
        return free;
    }
}
