package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.RideAlongTask;
import dev.injectorplanner.core.plan.PlanChange.Stay;
import dev.injectorplanner.core.plan.PlanChange.VisitChange;
import dev.injectorplanner.core.plan.PlanChange.What;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Holds two schedules of one fleet against each other. */
final class DraftChange {
    private DraftChange() {}

    static PlanChange of(Draft before, Draft after) {
        Map<String, Stay> was = stays(before);
        Map<String, Stay> is = stays(after);
        TreeSet<String> trucks = new TreeSet<>(was.keySet());
        trucks.addAll(is.keySet());
        List<VisitChange> changes = new ArrayList<>();
        for (String key : trucks) {
            Stay one = was.get(key);
            Stay other = is.get(key);
            What what = what(one, other);
            if (what != null) {
                String truck = SecondVisit.truckOf(key);
                changes.add(
                        new VisitChange(truck, after.choicesOf(truck).truck().depot(), what, one, other));
            }
        }
        double failures = new PlanRisk(before).expectedFailures();
        return new PlanChange(
                after.schedule().cost() - before.schedule().cost(),
                Figures.tidy(hours(after) - hours(before)),
                new PlanRisk(after).expectedFailures() - failures,
                failures,
                changes,
                new BrokenWishes(after).list(),
                before.schedule().gap(),
                after.schedule().gap(),
                DaysChange.of(before.days(), after.days()),
                Figures.tidy(DaysChange.overtime(after.days()) - DaysChange.overtime(before.days())),
                DaysChange.limits(after.days()));
    }

    private static @Nullable What what(@Nullable Stay before, @Nullable Stay after) {
        if (before == null) {
            return after == null ? null : What.ADDED;
        }
        if (after == null) {
            return What.DROPPED;
        }
        if (!before.week().equals(after.week())) {
            return What.MOVED;
        }
        return before.equals(after) ? null : What.OTHER_WORK;
    }

    private static double hours(Draft draft) {
        return Stream.concat(
                        draft.schedule().choices().stream()
                                .map(choice -> choice.option().labourHours()),
                        draft.seconds().stream().map(second -> second.visit().labourHours()))
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    /** By truck; a second visit under a name of its own. */
    private static Map<String, Stay> stays(Draft draft) {
        Map<String, Stay> stays = new TreeMap<>();
        for (Schedule.Choice choice : draft.schedule().choices()) {
            stays.put(
                    choice.truck(), stay(draft, draft.choicesOf(choice.truck()).visitOf(choice.option())));
        }
        draft.seconds().forEach(second -> stays.put(second.key(), stay(draft, second.visit())));
        return stays;
    }

    private static Stay stay(Draft draft, PricedVisit visit) {
        return new Stay(
                draft.learned().firstWeek().plus(visit.week()),
                visit.cylinders(),
                visit.rideAlongs().stream().map(RideAlongTask::name).toList(),
                Figures.tidy(visit.labourHours()));
    }
}
