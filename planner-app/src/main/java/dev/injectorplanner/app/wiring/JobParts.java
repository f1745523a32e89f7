package dev.injectorplanner.app.wiring;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.DepotZones;
import dev.injectorplanner.app.jobs.JobRegistry;
import dev.injectorplanner.app.jobs.JobRunner;
import dev.injectorplanner.app.jobs.JobRuns;
import dev.injectorplanner.app.jobs.JobTimes;
import dev.injectorplanner.app.jobs.JobWatch;
import dev.injectorplanner.app.jobs.quartz.QuartzJobs;
import dev.injectorplanner.app.store.Store;
import java.lang.management.ManagementFactory;
import java.time.InstantSource;
import java.util.UUID;

/**
 * The jobs of one process, put together.
 *
 * @param frame runs them
 * @param times when they run
 * @param zones depots and their zones
 * @param settings the site's settings
 */
public record JobParts(JobRunner frame, JobTimes times, DepotZones zones, JobsSettings settings)
        implements AutoCloseable {
    /** The jobs of an application with their real tasks; a run that has failed for good is an alert to the administrator. */
    public static JobParts of(Application application, JobsSettings settings) {
        return of(
                application.store(),
                JobTasks.of(application, settings),
                new AlertedJobs(InstantSource.system()),
                settings);
    }

    /** The same with other tasks, and another one to be told. */
    public static JobParts of(Store store, JobRegistry registry, JobWatch watch, JobsSettings settings) {
        DepotZones zones = new DepotZones(store.dataSource());
        InstantSource clock = InstantSource.system();
        JobRuns runs = new JobRuns(store.dataSource(), clock, node(), settings.lease());
        return new JobParts(
                new JobRunner(runs, registry, zones, watch, clock),
                new JobTimes(store.dataSource(), zones),
                zones,
                settings);
    }

    /** Makes them ready to be fired. */
    public QuartzJobs ready(Store store) {
        if (store.isShared()) {
            NodeClock.await(store.dataSource());
        }
        return QuartzJobs.ready(store.dataSource(), store.isShared(), frame, times, settings.quartz());
    }

    /** Process and machine, and something of this start's own: a process number comes again. */
    private static String node() {
        return ManagementFactory.getRuntimeMXBean().getName() + "/"
                + UUID.randomUUID().toString().substring(0, 8);
    }

    @Override
    public void close() {
        frame.close();
    }
}
