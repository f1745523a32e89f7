package dev.injectorplanner.app.web;

import dev.injectorplanner.app.jobs.quartz.QuartzJobs;
import dev.injectorplanner.app.web.guard.StoreWatch;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;

/** Healthy: the store answers its watch and jobs are fired. Asks nothing itself, so it answers at once. */
record JobsHealth(StoreWatch watch, QuartzJobs jobs) implements HealthIndicator {
    @Override
    public Health health() {
        return (watch.isUp() && jobs.isRunning() ? Health.up() : Health.down()).build();
    }
}
