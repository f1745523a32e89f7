package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.planning.FleetCalibration;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.site.KeptCalibrations;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
import dev.injectorplanner.core.replay.calibrate.PlanningFigure;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.LongFunction;

/**
 * Chooses the planning figures by replay on the fleet's own learned lives. Each week has draws of its own, so that luck is not
 * followed twice. A run that takes too long keeps nothing.
 */
public final class WeeklyCalibration implements JobTask {
    /** Who did it, in the audit trail. */
    private static final String BY = "jobs";

    private static final Duration MOST = Duration.ofHours(2);

    private final Store store;
    private final Planning planning;
    private final SiteSettings settings;
    private final Clock clock;
    private final LongFunction<FleetCalibration.Extent> extent;

    public WeeklyCalibration(Store store, Planning planning, SiteSettings settings, Clock clock) {
        this(store, planning, settings, clock, FleetCalibration.Extent::nightly);
    }

    /** @param extent how much is played, by its seed */
    WeeklyCalibration(
            Store store,
            Planning planning,
            SiteSettings settings,
            Clock clock,
            LongFunction<FleetCalibration.Extent> extent) {
        this.store = store;
        this.planning = planning;
        this.settings = settings;
        this.clock = clock;
        this.extent = extent;
    }

    @Override
    public boolean isWorthwhile(RunKey key) {
        return store.newestInjector() > 0;
    }

    @Override
    public TaskResult run(JobContext context) {
        long seed = context.day().toEpochDay();
        CalibrationResult result;
        try {
            result = new FleetCalibration(planning, settings)
                    .calibrate(context.day(), extent.apply(seed), new Watch(context, clock));
        } catch (InvalidValueException e) {
            return TaskResult.counted(Map.of("fleets with too few records", 1L)); // until readings and parts are loaded
        }
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("figures tried", (long) result.trials().size());
        counts.put(
                "steps kept",
                result.trials().stream().filter(trial -> trial.kept()).count());
        if (result.stopped()) {
            counts.put("stopped before its end", 1L);
            return TaskResult.counted(counts);
        }
        counts.put("changed", result.chosen().equals(result.before()) ? 0L : 1L);
        Set<PlanningFigure> set = settings.setFigures();
        return new TaskResult(
                counts,
                connection ->
                        KeptCalibrations.write(connection, context.key().text(), clock.instant(), result, set, BY));
    }

    /** Passes progress on, and ends what takes too long. */
    private static final class Watch implements ReplayWatch {
        private final JobContext context;
        private final Clock clock;
        private final Instant end;

        Watch(JobContext context, Clock clock) {
            this.context = context;
            this.clock = clock;
            this.end = clock.instant().plus(MOST);
        }

        @Override
        public void progress(String what, int done, int all) {
            context.progress().accept(all > 0 ? what + ", week " + done + " of " + all : what + ", " + done);
        }

        @Override
        public boolean stopped() {
            return clock.instant().isAfter(end) || Thread.currentThread().isInterrupted();
        }
    }
}
