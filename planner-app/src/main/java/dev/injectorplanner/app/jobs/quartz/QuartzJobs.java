package dev.injectorplanner.app.jobs.quartz;

import dev.injectorplanner.app.jobs.JobRunner;
import dev.injectorplanner.app.jobs.JobTimes;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.Upkeep;
import java.time.Duration;
import java.time.Instant;
import java.util.Properties;
import java.util.UUID;
import javax.sql.DataSource;
import org.quartz.Job;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.impl.StdSchedulerFactory;
import org.quartz.utils.DBConnectionManager;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Scheduled jobs, kept in the store; on PostgreSQL shared by all nodes of the database. */
public final class QuartzJobs implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(QuartzJobs.class);
    private static final int UPKEEP_SECONDS = 10;
    private static final int ROUND_MILLIS = 100;

    private final Scheduler scheduler;
    private final Triggers triggers;
    private final JobRunner frame;
    private final JobTimes times;
    private final Duration patience;
    private final Upkeep upkeep;

    private QuartzJobs(Scheduler scheduler, JobRunner frame, JobTimes times, Duration patience) {
        this.scheduler = scheduler;
        this.triggers = new Triggers(scheduler);
        this.frame = frame;
        this.times = times;
        this.patience = patience;
        this.upkeep =
                new Upkeep(frame.runs(), frame.registry(), run -> once(run.key(), run.attempt() + 1, run.byHand()));
    }

    /**
     * Makes everything ready; nothing is fired before {@link #begin}.
     *
     * @param shared several nodes may have the database
     */
    public static QuartzJobs ready(
            DataSource pool, boolean shared, JobRunner frame, JobTimes times, QuartzSettings settings) {
        String name = "planner-" + UUID.randomUUID(); // Quartz knows pools by name, all over the process
        DBConnectionManager.getInstance().addConnectionProvider(name, new PoolConnections(pool));
        if (!shared) {
            frame.runs().releaseAll(); // whoever had them is gone: an embedded store has one process
        }
        try {
            Properties properties = settings.properties(shared, name);
            Scheduler scheduler = new StdSchedulerFactory(properties).getScheduler();
            QuartzJobs jobs = new QuartzJobs(scheduler, frame, times, settings.patience());
            scheduler.setJobFactory(
                    (bundle, of) -> jobs.job(bundle.getJobDetail().getJobClass()));
            jobs.triggers.upkeepEvery(UPKEEP_SECONDS);
            jobs.triggers.follow(times.list(frame.registry().kinds()));
            return jobs;
        } catch (SchedulerException e) {
            throw cannotStart(e);
        }
    }

    private static IllegalStateException cannotStart(SchedulerException e) {
        return new IllegalStateException("the scheduled jobs cannot start: " + e.getMessage(), e);
    }

    /** Starts firing. */
    public void begin() {
        try {
            scheduler.start();
        } catch (SchedulerException e) {
            throw cannotStart(e);
        }
    }

    private Job job(Class<? extends Job> type) {
        return type == UpkeepJob.class ? new UpkeepJob(this::upkeep) : new FrameJob(frame);
    }

    private void upkeep() {
        upkeep.once();
        try {
            triggers.follow(times.list(frame.registry().kinds()));
        } catch (SchedulerException e) {
            LOG.error("The scheduled jobs cannot apply their settings", e);
        }
    }

    /** Starts a run by hand: soon, on any node. The same key twice is one run. */
    public void runNow(RunKey key) {
        once(key, 1, true);
    }

    private void once(RunKey key, int attempt, boolean byHand) {
        try {
            triggers.once(key, attempt, byHand);
        } catch (SchedulerException e) {
            throw new IllegalStateException("the " + key + " cannot be started: " + e.getMessage(), e);
        }
    }

    /** Whether jobs are fired. */
    public boolean isRunning() {
        try {
            return scheduler.isStarted() && !scheduler.isInStandbyMode() && !scheduler.isShutdown();
        } catch (SchedulerException e) {
            return false;
        }
    }

    /** Fires no more, gives what is under way some seconds, and stops. What is cut off is taken over later. */
    @Override
    public void close() {
        try {
            if (isRunning()) {
                scheduler.standby();
                Thread.sleep(ROUND_MILLIS); // the firing thread hands back what it was waiting for
            }
            Instant end = Instant.now().plus(patience);
            while (!scheduler.getCurrentlyExecutingJobs().isEmpty()
                    && Instant.now().isBefore(end)) {
                Thread.sleep(50);
            }
            if (frame.active() > 0) {
                LOG.warn("{} runs were interrupted; they resume at the next start, or on another node", frame.active());
            }
            scheduler.shutdown(false);
        } catch (SchedulerException e) {
            LOG.error("The scheduled jobs do not stop properly", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
