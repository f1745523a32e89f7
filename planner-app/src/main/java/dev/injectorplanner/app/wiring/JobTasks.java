package dev.injectorplanner.app.wiring;

import dev.injectorplanner.app.Application;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRegistry;
import dev.injectorplanner.app.jobs.task.Backup;
import dev.injectorplanner.app.jobs.task.LifeRefit;
import dev.injectorplanner.app.jobs.task.NewRecords;
import dev.injectorplanner.app.jobs.task.NightlyPlan;
import dev.injectorplanner.app.jobs.task.PlanKeeper;
import dev.injectorplanner.app.jobs.task.RefittedLives;
import dev.injectorplanner.app.jobs.task.Sweep;
import dev.injectorplanner.app.planning.Planning;
import java.nio.file.Path;
import javax.sql.DataSource;

/** Which job does what: the one place where a job gets its task. */
final class JobTasks {
    private JobTasks() {}

    static JobRegistry of(Application application, JobsSettings settings) {
        DataSource pool = application.store().dataSource();
        Planning planning = application.planning();
        PlanKeeper keeper = (runKey, depot, at, planned) -> application.plans().keep(runKey, depot, at, planned.plan());
        JobRegistry.Builder registry = JobRegistry.builder()
                .add(JobKind.NIGHTLY_PLAN, new NightlyPlan(planning, keeper))
                .add(JobKind.SWEEP, new Sweep(planning, keeper, new NewRecords(pool)))
                .add(JobKind.LIFE_REFIT, new LifeRefit(planning, new RefittedLives(pool)));
        // A PostgreSQL database has its own tools and its own administrator for copies.
        application.store().findFolder().ifPresent(store -> {
            Path folder = settings.backupFolder().orElse(store.resolveSibling(store.getFileName() + "-backup"));
            registry.add(JobKind.BACKUP, new Backup(pool, folder, settings.backupKeep()));
        });
        return registry.build();
    }
}
