package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.MeterUsage;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Tasks that come round. The last one on record counts: the next is due an interval after it, by meter and by months. Where
 * none is on record a task counts as done at each multiple of its interval so far, so that it is next due at the next
 * multiple: of the meter, or of the months since the truck came into service.
 */
final class IntervalRule {
    private IntervalRule() {}

    private record Next(LocalDate by, String evidence, String limit) {}

    static void apply(TruckCheck truck) {
        for (IntervalTask task : truck.index.intervalsOf(truck.truck.family())) {
            TaskDone last = last(truck, task.task());
            Next next = earlier(
                    meter(truck, truck.usage.odometer(), task.everyKm(), "km", last, TaskDone::odometerKm),
                    earlier(
                            meter(
                                    truck,
                                    truck.usage.engineHours(),
                                    task.everyHours(),
                                    "engine hours",
                                    last,
                                    TaskDone::engineHours),
                            months(truck, task.everyMonths(), last)));
            if (next != null) {
                truck.due(
                        null,
                        DueKind.INTERVAL,
                        task.task(),
                        DueAction.SERVICE,
                        next.evidence,
                        next.limit,
                        DueRule.SITE,
                        next.by);
            }
        }
    }

    /** The newest on record up to today; null without one. */
    private static @Nullable TaskDone last(TruckCheck truck, String task) {
        TaskDone last = null;
        for (TaskDone done : truck.index.tasksDoneOf(truck.truck.truck())) { // by service and day
            if (done.task().equals(task) && !done.doneOn().isAfter(truck.today)) {
                last = done;
            }
        }
        return last;
    }

    private static @Nullable Next earlier(@Nullable Next one, @Nullable Next other) {
        return one == null ? other : other == null || !other.by.isBefore(one.by) ? one : other;
    }

    private static @Nullable Next meter(
            TruckCheck truck,
            MeterUsage usage,
            @Nullable Double every,
            String unit,
            @Nullable TaskDone last,
            Function<TaskDone, @Nullable Double> noted) {
        Double now = usage.meterOn(truck.today);
        if (every == null || now == null) {
            return null;
        }
        Double then = last == null ? null : usage.meterAt(last.doneOn(), noted.apply(last), truck.today);
        double next = then == null ? (Math.floor(now / every) + 1) * every : then + every;
        LocalDate by = truck.dayAt(next, now, usage.perWeek());
        return by == null
                ? null
                : new Next(
                        by,
                        (then == null || last == null
                                        ? Figures.whole(now) + " " + unit + " in total"
                                        : "last done on " + last.doneOn() + ", " + Figures.whole(now - then) + " "
                                                + unit + " ago")
                                + ", next at " + Figures.whole(next) + " " + unit,
                        "every " + Figures.whole(every) + " " + unit);
    }

    private static @Nullable Next months(TruckCheck truck, @Nullable Integer every, @Nullable TaskDone last) {
        if (every == null) {
            return null;
        }
        String limit = "every " + every + " months";
        if (last != null) {
            return new Next(
                    last.doneOn().plusMonths(every),
                    "last done on " + last.doneOn() + ", next after " + every + " months",
                    limit);
        }
        LocalDate start = truck.truck.inServiceOn();
        long done = ChronoUnit.MONTHS.between(start, truck.today) / every;
        return new Next(
                start.plusMonths((done + 1) * every),
                "in service since " + start + ", next after " + (done + 1) * every + " months",
                limit);
    }
}
