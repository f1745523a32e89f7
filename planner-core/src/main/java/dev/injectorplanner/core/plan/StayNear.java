package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.Schedule.Choice;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Visits of an earlier schedule are worth a little more where they stay as they are. Of schedules as good as each other one
 * is then chosen that moves few visits, and a change shows what was asked instead of a shuffle.
 */
final class StayNear {
    private static final double ROUNDING = 1e-6;

    private final ScheduleRequest request;
    private final double worth;
    private final Map<String, VisitOption> before = new HashMap<>();
    private final Map<String, TruckOptions> favoured = new HashMap<>();
    private final Map<String, TruckOptions> asked = new HashMap<>();

    /** @param worth of a visit that stays, in the site's currency */
    StayNear(ScheduleRequest request, Schedule near, double worth) {
        this.request = request;
        this.worth = worth;
        near.choices().forEach(choice -> before.put(choice.truck(), choice.option()));
        request.trucks().forEach(truck -> asked.put(truck.truck(), truck));
    }

    /** The same request, visits that stay cheaper by their worth. */
    ScheduleRequest favouring() {
        request.trucks().forEach(truck -> favoured.put(truck.truck(), favouring(truck)));
        return new ScheduleRequest(
                request.weeks(),
                request.trucks().stream()
                        .map(truck -> favoured.getOrDefault(truck.truck(), truck))
                        .toList(),
                request.depots(),
                request.groups());
    }

    private TruckOptions favouring(TruckOptions truck) {
        VisitOption was = before.get(truck.truck());
        return new TruckOptions(
                truck.truck(),
                truck.depot(),
                truck.dutyGroup(),
                truck.options().stream()
                        .map(option ->
                                was != null && isSame(option, was) ? priced(option, option.cost() - worth) : option)
                        .toList(),
                truck.latestWeek(),
                truck.pinnedWeek());
    }

    private static boolean isSame(VisitOption one, VisitOption other) {
        return one.week() == other.week() && one.cylinders().equals(other.cylinders());
    }

    private static VisitOption priced(VisitOption option, double cost) {
        return new VisitOption(option.week(), option.cylinders(), option.labourHours(), option.truckDays(), cost);
    }

    /**
     * A schedule of the favouring request in true costs.
     *
     * @param proven a schedule of the true request, whose bound holds for this one too
     */
    Schedule trueCosts(Schedule found, Schedule proven) {
        double cost = found.cost();
        List<Choice> choices = new ArrayList<>();
        for (Choice choice : found.choices()) {
            int place = options(favoured, choice.truck()).indexOf(choice.option());
            VisitOption option = options(asked, choice.truck()).get(place);
            cost += option.cost() - choice.option().cost();
            choices.add(new Choice(choice.truck(), option));
        }
        return new Schedule(choices, found.notPlaced(), cost, proven.bound(), found.brokenWishes(), proven.stop());
    }

    /** Whether one schedule in true costs is as good as another, what each lets stay counted at its worth. */
    boolean isWorthIt(Schedule staying, Schedule other) {
        return staying.cost() - worthOfStaying(staying) <= other.cost() - worthOfStaying(other) + ROUNDING;
    }

    private double worthOfStaying(Schedule schedule) {
        return worth
                * schedule.choices().stream()
                        .filter(choice -> {
                            VisitOption was = before.get(choice.truck());
                            return was != null && isSame(choice.option(), was);
                        })
                        .count();
    }

    private static List<VisitOption> options(Map<String, TruckOptions> trucks, String truck) {
        TruckOptions options = trucks.get(truck);
        if (options == null) {
            throw new IllegalStateException("truck " + truck + " was scheduled and not asked for");
        }
        return options.options();
    }
}
