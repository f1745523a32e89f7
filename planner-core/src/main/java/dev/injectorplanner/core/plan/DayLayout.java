package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.WeekCapacity;
import dev.injectorplanner.core.schedule.days.DayChecker;
import dev.injectorplanner.core.schedule.days.DayPin;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.schedule.days.DayPlanner;
import dev.injectorplanner.core.schedule.days.DayVisit;
import dev.injectorplanner.core.schedule.days.DepotWeek;
import dev.injectorplanner.core.schedule.days.DutySpare;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Lays the visits of the coming two weeks into days. */
final class DayLayout {
    /** Weeks that get days. */
    static final int WEEKS = 2;

    /** What a depot's week is laid out from. */
    record Input(DepotWeek week, List<DayVisit> visits, DutySpare spare) {}

    private final Learned learned;
    private final PartsThere partsThere;
    private final Holds holds;
    private final SafetyPlan safety;
    private final int weeks;
    private final Map<String, List<DepotWeek>> weeksOf = new TreeMap<>();
    private final Map<String, Map<LocalDate, Integer>> groupSpare;
    private final Map<Input, DayPlan> known;
    private final Set<String> pinsDropped = new HashSet<>();

    /**
     * @param partsThere the day on which the kit of a truck's way is complete
     * @param known weeks laid out before, which may be shared by threads: the same input gives the same days
     */
    DayLayout(
            Learned learned,
            CapacityCalendar calendar,
            Holds holds,
            SafetyPlan safety,
            PartsThere partsThere,
            Map<Input, DayPlan> known) {
        this.known = known;
        this.learned = learned;
        this.partsThere = partsThere;
        this.holds = holds;
        this.safety = safety;
        this.weeks = Math.min(WEEKS, learned.policy().weeks());
        this.groupSpare = calendar.groupSpare(weeks);
        for (WeekCapacity row : calendar.depotCapacity()) {
            if (row.week() < weeks) {
                Depot depot = learned.index().depot(row.depot());
                weeksOf.computeIfAbsent(row.depot(), none -> new ArrayList<>())
                        .add(learned.depotWeek(depot, calendar, row.week(), row.overtimeHours()));
            }
        }
    }

    /** When the kit of a truck's way is complete. */
    interface PartsThere {
        LocalDate of(TruckChoices truck, PricedVisit visit);
    }

    /** A truck's chosen way. */
    record Chosen(TruckChoices truck, PricedVisit visit) {}

    /**
     * Lays out all depots.
     *
     * @throws IllegalStateException if a day breaks a limit, with each in words
     */
    List<DepotDays> of(List<Chosen> chosen) {
        Map<String, List<DayVisit>> visits = new TreeMap<>();
        for (Chosen each : chosen) {
            if (each.visit().week() < weeks && each.visit().labourHours() > 0) {
                visits.computeIfAbsent(each.truck().truck().depot(), none -> new ArrayList<>())
                        .add(dayVisit(each));
            }
        }
        Map<String, Map<LocalDate, Integer>> spare = new TreeMap<>();
        groupSpare.forEach((group, days) -> spare.put(group, new TreeMap<>(days)));
        List<DepotDays> all = new ArrayList<>();
        weeksOf.forEach((depot, those) -> {
            DayPlan plan = new DayPlan(List.of(), List.of());
            for (DepotWeek week : those) {
                List<DayVisit> ofWeek = new ArrayList<>(safety.of(depot, week.week()));
                visits.getOrDefault(depot, List.of()).stream()
                        .filter(visit -> visit.week() == week.week())
                        .forEach(ofWeek::add);
                ofWeek.sort(Comparator.comparing(DayVisit::truck).thenComparing(DayVisit::diagnosis));
                DayPlan laid = laid(new Input(week, ofWeek, spareOf(week, ofWeek, spare)));
                takeFrom(spare, ofWeek, laid);
                plan = plan.with(laid);
            }
            all.add(new DepotDays(depot, plan));
        });
        return all;
    }

    /** What is left of the groups of a week's trucks, on its days: nothing else can change its layout. */
    private static DutySpare spareOf(
            DepotWeek week, List<DayVisit> visits, Map<String, Map<LocalDate, Integer>> spare) {
        Map<String, Map<LocalDate, Integer>> own = new TreeMap<>();
        for (DayVisit visit : visits) {
            Map<LocalDate, Integer> days = visit.dutyGroup() == null ? null : spare.get(visit.dutyGroup());
            if (days != null && !week.days().isEmpty()) {
                IsoWeek of = IsoWeek.of(week.days().get(0).date());
                Map<LocalDate, Integer> those = new TreeMap<>(days);
                those.keySet().removeIf(day -> !IsoWeek.of(day).equals(of));
                own.put(visit.dutyGroup(), those);
            }
        }
        return new DutySpare(own);
    }

    private DayPlan laid(Input input) {
        DayPlan before = known.get(input);
        if (before != null) {
            return before;
        }
        List<DepotWeek> one = List.of(input.week());
        DayPlan plan = new DayPlanner().plan(one, input.visits(), input.spare());
        List<String> wrong = DayChecker.listViolations(one, input.visits(), input.spare(), plan);
        if (!wrong.isEmpty()) {
            throw new IllegalStateException("the days break their limits: " + String.join("; ", wrong));
        }
        known.put(input, plan);
        return plan;
    }

    /** Trucks in the bays of one depot are missing to the groups that other depots share. */
    private static void takeFrom(Map<String, Map<LocalDate, Integer>> spare, List<DayVisit> visits, DayPlan plan) {
        Map<String, String> groupOf = new HashMap<>();
        visits.forEach(visit -> {
            if (visit.dutyGroup() != null && !visit.diagnosis()) {
                groupOf.put(visit.truck(), visit.dutyGroup());
            }
        });
        for (DayPlan.Laid laid : plan.laid()) {
            Map<LocalDate, Integer> days = spare.get(groupOf.getOrDefault(laid.truck(), ""));
            if (days != null && !laid.diagnosis()) {
                laid.start()
                        .toLocalDate()
                        .datesUntil(laid.end().toLocalDate().plusDays(1))
                        .forEach(day -> days.computeIfPresent(day, (on, left) -> left - 1));
            }
        }
    }

    /** The day that a truck's visit is fixed to is no longer asked for, since it cannot be had. */
    void dropPin(String truck) {
        pinsDropped.add(truck);
    }

    /** Whether a truck's visit is laid where the foreman fixed it. */
    boolean isPinned(String truck, int week) {
        DayPin pin = holds.days().get(truck);
        return pin != null
                && !pinsDropped.contains(truck)
                && !pin.day().isBefore(learned.today())
                && learned.weekOf(pin.day()) == week;
    }

    private DayVisit dayVisit(Chosen chosen) {
        String truck = chosen.truck().truck().truck();
        int week = chosen.visit().week();
        List<AwayWindow> away = learned.index().awayOf(truck);
        LocalDate parts = partsThere.of(chosen.truck(), chosen.visit());
        LocalDate diagnosed = safety.dayOf(truck);
        LocalDate monday = learned.firstWeek().plus(week).monday();
        Set<LocalDate> notOn = monday.datesUntil(monday.plusDays(7))
                .filter(day -> day.isBefore(parts)
                        || diagnosed != null && !day.isAfter(diagnosed)
                        || !chosen.truck().truck().inServiceAt(day)
                        || away.stream().anyMatch(window -> window.touches(day, day)))
                .collect(Collectors.toSet());
        Integer held = chosen.truck().options().pinnedWeek();
        return new DayVisit(
                truck,
                week,
                chosen.visit().labourHours(),
                false,
                chosen.truck().truck().dutyGroup(),
                notOn,
                held != null && held == week,
                isPinned(truck, week) ? holds.days().get(truck) : null);
    }
}
