package dev.injectorplanner.app.jobs.quartz;

import dev.injectorplanner.core.check.Require;
import java.time.Duration;
import java.util.Properties;

/**
 * How jobs are fired.
 *
 * @param threads jobs at a time in this process, 1 to 32
 * @param checkIn how often a node of a shared database says that it lives, 1 s to 1 min
 * @param patience how long a stop waits for jobs under way, up to 10 min
 */
public record QuartzSettings(int threads, Duration checkIn, Duration patience) {
    public QuartzSettings {
        Require.within("jobs.threads", threads, 1, 32);
        Require.within("jobs.check_in_seconds", checkIn.toMillis() / 1_000.0, 1, 60);
        Require.within("jobs.stop_seconds", patience.toMillis() / 1_000.0, 0, 600);
    }

    /**
     * Quartz's own properties.
     *
     * @param pool the name under which Quartz finds the store's pool
     */
    Properties properties(boolean shared, String pool) {
        Properties set = new Properties();
        set.put("org.quartz.scheduler.instanceName", "planner");
        set.put("org.quartz.scheduler.instanceId", "AUTO");
        set.put("org.quartz.scheduler.skipUpdateCheck", "true");
        // as often an idle node looks for work that another put there
        set.put("org.quartz.scheduler.idleWaitTime", String.valueOf(checkIn.toMillis()));
        set.put("org.quartz.scheduler.interruptJobsOnShutdown", "false");
        set.put("org.quartz.threadPool.class", "org.quartz.simpl.SimpleThreadPool");
        set.put("org.quartz.threadPool.threadCount", String.valueOf(threads + 1)); // one for the upkeep
        set.put("org.quartz.threadPool.makeThreadsDaemons", "true");
        set.put("org.quartz.jobStore.class", "org.quartz.impl.jdbcjobstore.JobStoreTX");
        String delegates = "org.quartz.impl.jdbcjobstore.";
        set.put(
                "org.quartz.jobStore.driverDelegateClass",
                delegates + (shared ? "PostgreSQLDelegate" : "HSQLDBDelegate"));
        set.put(
                "org.quartz.jobStore.driverDelegateInitString",
                "triggerPersistenceDelegateClasses=" + LocalTimesKeeping.class.getName());
        set.put("org.quartz.jobStore.dataSource", pool);
        set.put("org.quartz.jobStore.useProperties", "true");
        set.put("org.quartz.jobStore.isClustered", String.valueOf(shared));
        set.put("org.quartz.jobStore.clusterCheckinInterval", String.valueOf(checkIn.toMillis()));
        set.put("org.quartz.jobStore.acquireTriggersWithinLock", "true");
        return set;
    }
}
