package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueItems;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.OpenDay;
import dev.injectorplanner.core.schedule.WeekCapacity;
import dev.injectorplanner.core.schedule.days.DayPin;
import dev.injectorplanner.core.schedule.days.DayVisit;
import dev.injectorplanner.core.schedule.days.DepotWeek;
import dev.injectorplanner.core.schedule.days.DiagnosisPlanner;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Diagnosis visits of trucks with an open safety fault. They are settled before anything else is planned: the schedule gets
 * what they leave of hours and bays.
 */
final class SafetyPlan {
    private final Learned learned;
    private final Holds holds;
    private final CapacityCalendar calendar;
    private final Map<String, List<DueItem>> open = new LinkedHashMap<>();
    private final Map<String, Truck> trucks = new TreeMap<>();
    private final Map<String, DayVisit> diagnoses = new TreeMap<>();

    /** @param calendar without anything taken from it */
    SafetyPlan(Learned learned, CapacityCalendar calendar, Holds holds) {
        this.learned = learned;
        this.holds = holds;
        this.calendar = calendar;
        learned.dueItems().stream()
                .filter(item -> item.kind() == DueKind.SAFETY)
                .sorted(DueItems.MOST_PRESSING)
                .forEach(item -> open.computeIfAbsent(item.truck(), none -> new ArrayList<>())
                        .add(item));
        for (Truck truck : learned.index().fleet().trucks()) {
            if (open.containsKey(truck.truck())) {
                trucks.put(truck.truck(), truck);
            }
        }
        for (Depot depot : learned.index().fleet().depots()) {
            place(depot);
        }
    }

    private void place(Depot depot) {
        List<DiagnosisPlanner.Asking> asking = open.keySet().stream()
                .filter(truck -> truckOf(truck).depot().equals(depot.depot()) && heldOff(truck) == null)
                .map(truck -> new DiagnosisPlanner.Asking(
                        truck, learned.policy().safety().diagnosisHours(), notThere(truckOf(truck))))
                .toList();
        if (asking.isEmpty()) {
            return;
        }
        List<DepotWeek> weeks = new ArrayList<>();
        Map<Integer, Double> overtime = new TreeMap<>();
        calendar.depotCapacity().stream()
                .filter(row -> row.depot().equals(depot.depot()))
                .forEach(row -> overtime.put(row.week(), row.overtimeHours()));
        for (int week = 0; week < learned.policy().weeks(); week++) {
            weeks.add(learned.depotWeek(depot, calendar, week, overtime.getOrDefault(week, 0.0)));
        }
        List<DayPin> held = List.copyOf(holds.days().values());
        DiagnosisPlanner.place(weeks, asking, held).forEach(visit -> diagnoses.put(visit.truck(), visit));
    }

    private Truck truckOf(String name) {
        Truck truck = trucks.get(name);
        if (truck == null) {
            throw new IllegalStateException("truck " + name + " has a safety fault and is not in the fleet");
        }
        return truck;
    }

    /** Days of the horizon on which a truck is away or has left. */
    private Set<LocalDate> notThere(Truck truck) {
        Set<LocalDate> days = new HashSet<>();
        LocalDate end = learned.firstWeek().plus(learned.policy().weeks()).monday();
        List<AwayWindow> away = learned.index().awayOf(truck.truck());
        for (LocalDate day = learned.today(); day.isBefore(end); day = day.plusDays(1)) {
            LocalDate on = day;
            if (!truck.inServiceAt(on) || away.stream().anyMatch(window -> window.touches(on, on))) {
                days.add(on);
            }
        }
        return days;
    }

    /** Who holds a truck's diagnosis off; null where nobody does, or a code was reported since that nobody spoke of. */
    private @Nullable HeldOff heldOff(String truck) {
        HeldOff held = holds.heldOff().get(truck);
        boolean covers = held != null
                && (held.codes().isEmpty()
                        || open.getOrDefault(truck, List.of()).stream()
                                .allMatch(item -> held.codes().contains(item.faultCode())));
        return covers ? held : null;
    }

    /** The diagnosis of a truck, pinned to its place; null where it has none. */
    @Nullable
    DayVisit find(String truck) {
        return diagnoses.get(truck);
    }

    /** The day of a truck's diagnosis; null where it has none. */
    @Nullable
    LocalDate dayOf(String truck) {
        DayVisit visit = diagnoses.get(truck);
        return visit == null || visit.pin() == null ? null : visit.pin().day();
    }

    /** Diagnoses of a depot's week. */
    List<DayVisit> of(String depot, int week) {
        return diagnoses.values().stream()
                .filter(visit ->
                        visit.week() == week && truckOf(visit.truck()).depot().equals(depot))
                .toList();
    }

    List<DayVisit> all() {
        return List.copyOf(diagnoses.values());
    }

    List<DueItem> openOf(String truck) {
        return open.getOrDefault(truck, List.of());
    }

    /** Trucks that must not be driven, and the last day of it: that of the diagnosis, or the plan's last. */
    Map<String, LocalDate> offRoadUntil() {
        Map<String, LocalDate> until = new TreeMap<>();
        LocalDate end = learned.firstWeek().plus(learned.policy().weeks()).monday();
        for (String truck : open.keySet()) {
            LocalDate day = dayOf(truck);
            until.put(truck, day == null ? end : day);
        }
        return until;
    }

    /** What diagnoses leave of the weeks' hours and bays; where they need overtime, of that. */
    List<WeekCapacity> left(List<WeekCapacity> rows) {
        return rows.stream().map(this::left).toList();
    }

    private WeekCapacity left(WeekCapacity row) {
        List<DayVisit> taken = of(row.depot(), row.week());
        if (taken.isEmpty()) {
            return row;
        }
        Depot depot = learned.index().depot(row.depot());
        double hours = taken.stream().mapToDouble(DayVisit::labourHours).sum();
        double days = hours / learned.shifts().bayHoursPerDay(depot);
        double over = Math.max(0, hours - row.labourHours());
        return new WeekCapacity(
                row.depot(),
                row.week(),
                Math.max(0, row.labourHours() - hours),
                Math.max(0, row.overtimeHours() - over),
                row.overtimePremium(),
                Math.max(0, row.bayDays() - days));
    }

    /** Every truck with an open safety fault, by depot, most pressing first. */
    List<SafetyCase> cases() {
        List<SafetyCase> cases = new ArrayList<>();
        open.forEach((name, items) -> {
            Truck truck = truckOf(name);
            DayVisit visit = diagnoses.get(name);
            DayPin pin = visit == null ? null : visit.pin();
            cases.add(new SafetyCase(
                    name,
                    truck.depot(),
                    items,
                    learned.policy().safety().diagnosisHours(),
                    pin == null || pin.start() == null ? null : pin.day().atTime(pin.start()),
                    pin == null ? null : pin.bay(),
                    heldOff(name),
                    inTheWay(truck, pin)));
        });
        cases.sort(Comparator.comparing(SafetyCase::depot));
        return cases;
    }

    /** Why a diagnosis is not on the first open day. */
    private @Nullable String inTheWay(Truck truck, @Nullable DayPin pin) {
        if (heldOff(truck.truck()) != null) {
            return null;
        }
        Depot depot = learned.index().depot(truck.depot());
        LocalDate first = null;
        for (int week = 0; week < learned.policy().weeks() && first == null; week++) {
            first = calendar.openDays(depot, week).stream()
                    .map(OpenDay::date)
                    .findFirst()
                    .orElse(null);
        }
        if (first == null) {
            return "depot " + depot.depot() + " has no open day in the plan";
        }
        LocalDate day = pin == null ? null : pin.day();
        if (first.equals(day)) {
            return null;
        }
        String away = learned.index().awayOf(truck.truck()).stream()
                .filter(window -> window.touches(learned.today(), day == null ? LocalDate.MAX : day))
                .map(window -> "away " + window.from() + " to " + window.to() + " (" + window.reason() + ")")
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        if (!away.isEmpty()) {
            return "the truck is " + away + "; until then it must not be driven";
        }
        return day == null
                ? "no day has " + Figures.hours(learned.policy().safety().diagnosisHours()) + " and a bay for it"
                : "before it, the bays and hours go to the diagnoses of other trucks";
    }

    /** The week of a truck's diagnosis, and after it the first day on which other work may begin; null where it has none. */
    @Nullable
    IsoWeek weekOf(String truck) {
        LocalDate day = dayOf(truck);
        return day == null ? null : IsoWeek.of(day);
    }
}
