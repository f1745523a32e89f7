package dev.injectorplanner.app.wiring;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.jobs.FailedJob;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.TaskResult;
import java.time.InstantSource;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A job that is given up raises an alert to the administrator; the next run that goes well clears it. */
record AlertedJobs(Alerts alerts, InstantSource clock) implements Consumer<FailedJob> {
    private static final Logger LOG = LoggerFactory.getLogger(AlertedJobs.class);

    @Override
    public void accept(FailedJob failed) {
        LOG.error(
                "Someone has to look: the {} failed {} times and is given up: {}",
                failed.key(),
                failed.attempts(),
                failed.error());
        alerts.jobFailed(failed.key().kind().words(), depot(failed.key()), failed.error(), clock.instant());
    }

    /** The task, and that it went well. */
    JobTask watched(JobTask task) {
        return context -> {
            TaskResult result = task.run(context);
            alerts.jobWentWell(context.key().kind().words(), depot(context.key()), clock.instant());
            return result;
        };
    }

    private static @Nullable String depot(RunKey key) {
        return key.findDepot().orElse(null);
    }
}
