package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.schedule.Booked;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.Schedule.BrokenWish;
import dev.injectorplanner.core.schedule.Schedule.Choice;
import dev.injectorplanner.core.schedule.Schedule.Wish;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.days.DayPlan.NotLaid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Holds a schedule of weeks against its days. A visit that its week cannot hold in days goes to the cheapest of its truck's
 * other ways that has room, or is left out, so that nothing is promised which no day can keep. What that costs shows in the
 * gap, since the bound stays that of the weeks.
 */
final class LaidSchedule {
    private final ScheduleRequest request;
    private final Map<String, TruckChoices> cases;
    private final DayLayout layout;
    private final Schedule schedule;
    private final Map<String, TruckOptions> options = new HashMap<>();
    private final Map<String, VisitOption> chosen = new LinkedHashMap<>();
    private final Map<String, Set<VisitOption>> refused = new HashMap<>();
    private final Map<String, String> dropped = new TreeMap<>();
    private final Map<String, BrokenWish> broken = new TreeMap<>();
    private List<DepotDays> days = List.of();

    LaidSchedule(ScheduleRequest request, Map<String, TruckChoices> cases, Schedule schedule, DayLayout layout) {
        this.request = request;
        this.cases = cases;
        this.layout = layout;
        this.schedule = schedule;
        request.trucks().forEach(truck -> options.put(truck.truck(), truck));
        schedule.choices().forEach(choice -> chosen.put(choice.truck(), choice.option()));
        lay();
    }

    private void lay() {
        for (boolean done = false; !done; ) {
            days = layout.of(ways());
            List<NotLaid> notLaid = days.stream()
                    .flatMap(depot -> depot.days().notLaid().stream())
                    .toList();
            notLaid.forEach(this::move);
            done = notLaid.isEmpty();
        }
    }

    private List<DayLayout.Chosen> ways() {
        List<DayLayout.Chosen> ways = new ArrayList<>();
        chosen.forEach((truck, option) -> {
            TruckChoices its = of(cases, truck);
            ways.add(new DayLayout.Chosen(its, its.visitOf(option)));
        });
        return ways;
    }

    private static <V> V of(Map<String, V> map, String truck) {
        V found = map.get(truck);
        if (found == null) {
            throw new IllegalStateException("truck " + truck + " was scheduled and is not known");
        }
        return found;
    }

    private void move(NotLaid left) {
        String truck = left.truck();
        TruckOptions asked = of(options, truck);
        if (layout.isPinned(truck, left.week())) {
            layout.dropPin(truck);
            broken.put(truck, new BrokenWish(truck, Wish.PIN, left.week(), left.reason()));
            return;
        }
        VisitOption now = of(chosen, truck);
        refused.computeIfAbsent(truck, none -> new HashSet<>()).add(now);
        chosen.remove(truck);
        VisitOption next = another(asked, now);
        if (next == null) {
            dropped.put(truck, "the days of its week cannot hold it: " + left.reason());
        } else {
            chosen.put(truck, next);
        }
        Integer pinned = asked.pinnedWeek();
        if (pinned != null && (next == null || next.week() != pinned)) {
            broken.put(truck, new BrokenWish(truck, Wish.PIN, pinned, left.reason()));
        }
    }

    /** The cheapest other way with room; in the same week only a shorter one. */
    private @Nullable VisitOption another(TruckOptions truck, VisitOption not) {
        Booked booked = new Booked(request, current());
        Set<VisitOption> tried = refused.getOrDefault(truck.truck(), Set.of());
        return truck.options().stream()
                .filter(option -> !tried.contains(option))
                .filter(option -> option.week() != not.week() || option.labourHours() < not.labourHours())
                .filter(option -> booked.limitBeside(truck, option) == null)
                .filter(option -> truck.hasWish() || option.cost() + booked.overtimeOfMove(truck, option) < 0)
                .min(Comparator.comparing((VisitOption option) -> !truck.meetsWish(option))
                        .thenComparingDouble(option -> option.cost() + booked.overtimeOfMove(truck, option))
                        .thenComparingInt(VisitOption::week)
                        .thenComparingDouble(VisitOption::labourHours))
                .orElse(null);
    }

    private Schedule current() {
        List<Choice> choices = new ArrayList<>();
        request.trucks().forEach(truck -> {
            VisitOption option = chosen.get(truck.truck());
            if (option != null) {
                choices.add(new Choice(truck.truck(), option));
            }
        });
        return new Schedule(choices, List.of(), 0, null);
    }

    /** The schedule that its days can hold. */
    Schedule schedule() {
        if (refused.isEmpty() && broken.isEmpty()) {
            return schedule;
        }
        Schedule current = current();
        List<Schedule.NotPlaced> notPlaced = new ArrayList<>(schedule.notPlaced());
        dropped.forEach((truck, reason) -> {
            if (!chosen.containsKey(truck)) {
                notPlaced.add(new Schedule.NotPlaced(truck, reason));
            }
        });
        List<BrokenWish> wishes = new ArrayList<>(schedule.brokenWishes());
        wishes.removeIf(wish -> wish.wish() == Wish.PIN && broken.containsKey(wish.truck()));
        wishes.addAll(broken.values());
        double cost = new Booked(request, current).cost();
        Double bound = schedule.bound();
        return new Schedule(
                current.choices(),
                notPlaced,
                cost,
                bound == null ? null : Double.valueOf(Math.min(bound, cost)),
                wishes,
                schedule.stop());
    }

    List<DepotDays> days() {
        return days;
    }
}
