package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.schedule.Schedule.BrokenWish;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What another hold or more capacity changes in a plan. Nothing of it is kept.
 *
 * @param cost what the plan costs more; below zero it costs less
 * @param hours labour it takes more
 * @param expectedFailures failures more to expect within the horizon, the plan's replacements counted
 * @param expectedFailuresBefore failures to expect under the plan as it was
 * @param visits visits moved, added, dropped or with other work, by truck
 * @param brokenWishes pins and safety dates that cannot be met after the change
 * @param gapBefore how far from the best the plan before may be, as a share; null without a bound
 * @param gap the same after the change: costs apart by less than the two gaps may be no change at all
 * @param days visits of the first weeks whose day, bay or start is another, by truck
 * @param overtimeHours overtime more in the days of the first weeks
 * @param limits why days take overtime though plain hours are left, after the change, in words
 */
public record PlanChange(
        double cost,
        double hours,
        double expectedFailures,
        double expectedFailuresBefore,
        List<VisitChange> visits,
        List<BrokenWish> brokenWishes,
        @Nullable Double gapBefore,
        @Nullable Double gap,
        List<DayChange> days,
        double overtimeHours,
        List<String> limits) {
    public PlanChange {
        visits = List.copyOf(visits);
        brokenWishes = List.copyOf(brokenWishes);
        days = List.copyOf(days);
        limits = List.copyOf(limits);
    }

    /**
     * Where a visit stood and where it stands.
     *
     * @param truck the truck
     * @param depot its depot
     * @param before day, start and bay, in words; empty where it had none
     * @param after the same after the change
     */
    public record DayChange(String truck, String depot, String before, String after) {}

    /** What happened to a visit. */
    public enum What {
        ADDED,
        DROPPED,
        MOVED,
        /** Same week, other cylinders or ride-along work. */
        OTHER_WORK
    }

    /**
     * One truck's visit before and after.
     *
     * @param truck the truck
     * @param depot its depot
     * @param what what happened
     * @param before as it was, or null
     * @param after as it is, or null
     */
    public record VisitChange(
            String truck,
            String depot,
            What what,
            @Nullable Stay before,
            @Nullable Stay after) {}

    /**
     * A visit in short.
     *
     * @param week its week
     * @param cylinders cylinders done
     * @param along what is done along: the injector test and scheduled services, by name
     * @param labourHours its labour
     */
    public record Stay(IsoWeek week, List<Integer> cylinders, List<String> along, double labourHours) {
        public Stay {
            cylinders = List.copyOf(cylinders);
            along = List.copyOf(along);
        }
    }
}
