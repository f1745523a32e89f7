package dev.injectorplanner.app.wiring;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.digest.Digests;
import dev.injectorplanner.app.drop.DropFolder;
import dev.injectorplanner.app.drop.DropSettings;
import dev.injectorplanner.app.intake.LoadNotes;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRegistry;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.task.Backup;
import dev.injectorplanner.app.jobs.task.CurrentPlans;
import dev.injectorplanner.app.jobs.task.DropPass;
import dev.injectorplanner.app.jobs.task.LetterJobs;
import dev.injectorplanner.app.jobs.task.LifeRefit;
import dev.injectorplanner.app.jobs.task.LiveChanges;
import dev.injectorplanner.app.jobs.task.LivePlan;
import dev.injectorplanner.app.jobs.task.MailOut;
import dev.injectorplanner.app.jobs.task.NewRecords;
import dev.injectorplanner.app.jobs.task.NightlyPlan;
import dev.injectorplanner.app.jobs.task.PlanKeeper;
import dev.injectorplanner.app.jobs.task.RefittedLives;
import dev.injectorplanner.app.jobs.task.Sweep;
import dev.injectorplanner.app.jobs.task.WeeklyCalibration;
import dev.injectorplanner.app.mail.MailSending;
import dev.injectorplanner.app.mail.MailSettings;
import dev.injectorplanner.app.mail.Outbox;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.core.plan.Plan;
import java.time.Clock;
import java.util.UUID;
import javax.sql.DataSource;

/** Which job does what: the one place where a job gets its task. */
final class JobTasks {
    /** Who did it, in the audit trail. */
    private static final String BY = "jobs";

    private final Application application;
    private final JobsSettings settings;
    private final DataSource pool;
    private final JobRegistry.Builder registry = JobRegistry.builder();

    private JobTasks(Application application, JobsSettings settings) {
        this.application = application;
        this.settings = settings;
        this.pool = application.store().dataSource();
    }

    static JobRegistry of(Application application, JobsSettings settings) {
        JobTasks tasks = new JobTasks(application, settings);
        tasks.planning();
        tasks.letters();
        tasks.files();
        return tasks.registry.build();
    }

    private void add(JobKind kind, JobTask task) {
        registry.add(kind, task);
    }

    /** A plan that a job keeps raises, plans and clears alerts. */
    private void planning() {
        Alerts alerts = new Alerts(pool);
        Planning planning = application.planning();
        PlanKeeper keeper = (runKey, depot, at, planned, by) -> {
            long number = planning.keep(runKey, at, planned, depot, by);
            // A run that comes twice kept its plan the first time: that one is in force, and alerts speak of it.
            Plan kept = application.plans().find(number).map(KeptPlan::plan).orElse(planned.plan());
            alerts.update(new Planned(planned.fleet(), kept), at, BY);
        };
        Digests digests = new Digests(pool);
        JobTask nightly = new NightlyPlan(planning, keeper);
        add(JobKind.NIGHTLY_PLAN, context -> {
            var result = nightly.run(context);
            digests.daily(context.key().depot(), context.key().due());
            return result;
        });
        add(
                JobKind.LIVE_PLAN,
                new LivePlan(
                        planning,
                        application.plans(),
                        keeper,
                        new LiveChanges(pool),
                        new SiteSettings(pool)::quietBeforeReplanning));
        add(JobKind.SWEEP, new Sweep(planning, keeper, new NewRecords(pool)));
        add(JobKind.LIFE_REFIT, new LifeRefit(planning, new RefittedLives(pool)));
        add(
                JobKind.CALIBRATION,
                new WeeklyCalibration(application.store(), planning, new SiteSettings(pool), Clock.systemUTC()));
    }

    private void letters() {
        Digests digests = new Digests(pool);
        LetterJobs letters = new LetterJobs(
                new CurrentPlans(application.planning(), application.plans()), digests, application.confirmation());
        add(JobKind.WORK_LIST, letters.workList());
        add(JobKind.ORDER_LIST, letters.orderList());
        add(JobKind.DEADLINES, letters.deadlines());
        MailSettings.find(System.getenv())
                .ifPresent(mail -> add(
                        JobKind.MAIL_OUT,
                        new MailOut(digests, new MailSending(new Outbox(pool), mail, Clock.systemUTC()))));
    }

    private void files() {
        settings.dropFolder()
                .ifPresent(folder -> add(
                        JobKind.DROP_FOLDER,
                        new DropPass(
                                new DropFolder(
                                        application.intake(),
                                        DropSettings.standard(folder),
                                        "node-" + UUID.randomUUID(),
                                        Clock.systemUTC()),
                                Clock.systemUTC(),
                                reports -> LoadNotes.write(application.audit(), "drop folder", reports))));
        // A PostgreSQL database has its own tools and its own administrator for copies.
        application.store().findFolder().ifPresent(store -> {
            add(JobKind.BACKUP, new Backup(pool, settings.backupFolderOf(store), settings.backupKeep()));
        });
    }
}
