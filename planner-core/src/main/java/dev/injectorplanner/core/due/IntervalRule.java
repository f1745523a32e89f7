package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.MeterUsage;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * Tasks that come round. Until completions are recorded a task counts as done at each multiple of its interval so far,
 * so that it is next due at the next multiple: of the meter, or of the months since the truck came into service.
 */
final class IntervalRule {
    private IntervalRule() {}

    private record Next(LocalDate by, String evidence, String limit) {}

    static void apply(TruckCheck truck) {
        for (IntervalTask task : truck.index.intervalsOf(truck.truck.family())) {
            Next next = earlier(
                    meter(truck, truck.usage.odometer(), task.everyKm(), "km"),
                    earlier(
                            meter(truck, truck.usage.engineHours(), task.everyHours(), "engine hours"),
                            months(truck, task.everyMonths())));
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

    private static @Nullable Next earlier(@Nullable Next one, @Nullable Next other) {
        return one == null ? other : other == null || !other.by.isBefore(one.by) ? one : other;
    }

    private static @Nullable Next meter(TruckCheck truck, MeterUsage usage, @Nullable Double every, String unit) {
        Double now = usage.meterOn(truck.today);
        if (every == null || now == null) {
            return null;
        }
        double next = (Math.floor(now / every) + 1) * every;
        LocalDate by = truck.dayAt(next, now, usage.perWeek());
        return by == null
                ? null
                : new Next(
                        by,
                        Figures.whole(now) + " " + unit + " in total, next at " + Figures.whole(next) + " " + unit,
                        "every " + Figures.whole(every) + " " + unit);
    }

    private static @Nullable Next months(TruckCheck truck, @Nullable Integer every) {
        if (every == null) {
            return null;
        }
        LocalDate start = truck.truck.inServiceOn();
        long done = ChronoUnit.MONTHS.between(start, truck.today) / every;
        return new Next(
                start.plusMonths((done + 1) * every),
                "in service since " + start + ", next after " + (done + 1) * every + " months",
                "every " + every + " months");
    }
}
