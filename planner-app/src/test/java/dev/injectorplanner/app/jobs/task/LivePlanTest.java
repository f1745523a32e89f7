package dev.injectorplanner.app.jobs.task;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.jobs.DepotZones;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRegistry;
import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.jobs.JobRunner;
import dev.injectorplanner.app.jobs.JobRuns;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.RunOutcome;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.site.SettingKinds;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.MovedClock;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans that are made again by themselves after close-outs and loads. */
class LivePlanTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Riga");
    private static final Duration QUIET = Duration.ofMinutes(5); // planner default

    @TempDir
    private Path folder;

    private final Instant now = Instant.now();
    private final MovedClock clock = new MovedClock(now);
    private Application application;
    private AuditTrail audit;
    private SiteSettings settings;
    private PlanKeeper keeper;
    private long first;

    @BeforeEach
    void fill() throws Exception {
        application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        audit = new AuditTrail(application.store().dataSource());
        settings = new SiteSettings(application.store().dataSource());
        keeper = (runKey, depot, at, planned, by) -> application.planning().keep(runKey, at, planned, depot, by);
        assertThat(new Intake(application.store())
                        .load(
                                FleetFiles.write(OneOfEach.fleet(), Files.createDirectories(folder.resolve("files"))),
                                LoadSettings.of(Mode.GOOD_ROWS),
                                LoadListener.SILENT))
                .noneMatch(report -> report.anyRefused());
        Planning planning = application.planning();
        planning.planAndKeep("first", now, LocalDate.ofInstant(now, ZONE), planning.policy(), "North");
        first = inForce();
        assertThat(minute(0))
                .as("the first run only notes how far the changes reach")
                .isTrue();
        assertThat(inForce()).isEqualTo(first);
    }

    @AfterEach
    void close() {
        application.close();
    }

    private long inForce() {
        return application.plans().findInForce("North").orElseThrow().id();
    }

    private void closeOut(String who) {
        new StoreSql(application.store().dataSource()).inTransaction(connection -> {
            AuditTrail.writeOfTruck(
                    connection,
                    "T-1",
                    who,
                    "close out a visit",
                    "truck T-1, " + LocalDate.ofInstant(now, ZONE),
                    "",
                    "done");
            return true;
        });
    }

    private LivePlan task(PlanKeeper kept) {
        return new LivePlan(
                application.planning(),
                application.plans(),
                kept,
                new LiveChanges(application.store().dataSource()),
                settings::quietBeforeReplanning);
    }

    private boolean minute(int minute) {
        return minute(minute, keeper);
    }

    /** The job as it fires in that minute; whether there was a run. */
    private boolean minute(int minute, PlanKeeper kept) {
        return run(new RunKey(JobKind.LIVE_PLAN, "", now.plus(Duration.ofMinutes(minute))), kept);
    }

    private boolean run(RunKey key, PlanKeeper kept) {
        if (key.due().isAfter(clock.instant())) {
            clock.move(Duration.between(clock.instant(), key.due()));
        }
        try (JobRunner runner = new JobRunner(
                runs(),
                JobRegistry.builder().add(JobKind.LIVE_PLAN, task(kept)).build(),
                new DepotZones(application.store().dataSource()),
                (connection, failed) -> Alerts.jobFailed(
                        connection, failed.key().kind().words(), null, failed.error(), clock.instant()),
                clock)) {
            return runner.run(key, false, 0);
        }
    }

    private JobRuns runs() {
        return new JobRuns(application.store().dataSource(), clock, "test", Duration.ofMinutes(10));
    }

    @Test
    void two_close_outs_in_a_row_are_one_plan_that_says_what_it_was_made_after() {
        closeOut("ann");
        assertThat(minute(2)).as("not quiet for long enough").isFalse();
        closeOut("bob");
        assertThat(minute((int) QUIET.toMinutes() + 1)).isTrue();
        long made = inForce();
        assertThat(made).isGreaterThan(first);
        assertThat(audit.findNewest("make a plan").orElseThrow().who())
                .startsWith("replan after close-out of truck T-1, ")
                .endsWith(" by ann and 1 more");
        assertThat(minute(8)).as("nothing new").isFalse();
        assertThat(inForce()).isEqualTo(made);
        JobRun run = runs().listNewest(1).get(0);
        assertThat(run.outcome()).isEqualTo(RunOutcome.DONE);
        assertThat(run.counts()).isEqualTo("changes 2, plans 1");
    }

    @Test
    void a_load_is_a_change_too() {
        audit.record("drop folder", "load a file", "readings.csv", "", "reading: 10 added");
        assertThat(minute(6)).isTrue();
        assertThat(inForce()).isGreaterThan(first);
        assertThat(audit.findNewest("make a plan").orElseThrow().who())
                .isEqualTo("replan after load of readings.csv by drop folder");
    }

    @Test
    void switched_off_nothing_is_planned() {
        settings.set(SettingKinds.get("replan-after-changes"), "off", "ann");
        closeOut("ann");
        assertThat(minute(90)).isFalse();
        assertThat(inForce()).isEqualTo(first);
        settings.set(SettingKinds.get("replan-after-changes"), "after 60 minutes", "ann");
        assertThat(settings.quietBeforeReplanning()).isEqualTo(Optional.of(Duration.ofHours(1)));
        assertThat(minute(59)).isFalse();
        assertThat(minute(91)).isTrue();
    }

    @Test
    void it_waits_while_a_change_is_previewed() {
        closeOut("ann");
        Planning planning = application.planning();
        planning.tryOut(LocalDate.ofInstant(now, ZONE), planning.policy(), "North", Holds.none(), List.of());
        assertThat(minute(6)).isFalse();
        assertThat(inForce()).isEqualTo(first);
    }

    /** The name is a field of the entry: nothing is read out of its sentence. */
    @Test
    void the_truck_of_a_close_out_is_a_field_of_its_entry() {
        closeOut("ann");
        audit.record("drop folder", "load a file", "truck T-1, 2026-03-02.csv", "", "reading: 10 added");
        assertThat(new LiveChanges(application.store().dataSource()).since(0))
                .extracting(LiveChanges.Change::truck)
                .containsExactly(Optional.of("T-1"), Optional.empty());
    }

    @Test
    void it_waits_while_a_change_is_previewed_on_another_node() {
        closeOut("ann");
        Planning other = new Planning(
                application.store(),
                new Planner(new ExactScheduler(SearchLimits.USUAL)),
                application.holds(),
                application.plans());
        other.tryOut(LocalDate.ofInstant(now, ZONE), other.policy(), "North", Holds.none(), List.of());
        assertThat(minute(6)).isFalse();
        assertThat(inForce()).isEqualTo(first);
    }

    @Test
    void a_plan_that_fails_leaves_the_old_one_in_force_and_an_alert() {
        closeOut("ann");
        PlanKeeper failing = (runKey, depot, at, planned, by) -> {
            throw new IllegalStateException("the disk is full");
        };
        RunKey key = new RunKey(JobKind.LIVE_PLAN, "", now.plus(Duration.ofMinutes(6)));
        assertThat(run(key, failing)).isTrue();
        assertThat(minute(7, failing))
                .as("one that waits for its next try is not joined by others")
                .isFalse();
        for (int minutes : new int[] {2, 6, 26}) { // after 1, 5 and 25 minutes it is tried again
            clock.move(Duration.ofMinutes(minutes));
            assertThat(run(key, failing)).isTrue();
        }
        assertThat(runs().find(key).orElseThrow().outcome()).isEqualTo(RunOutcome.GIVEN_UP);
        assertThat(inForce()).isEqualTo(first);
        assertThat(new StoreSql(application.store().dataSource())
                        .list(
                                "select subject, evidence from alert where open_key = 0",
                                row -> row.getString(1) + ": " + row.getString(2)))
                .containsExactly("replan after changes: IllegalStateException: the disk is full");
        assertThat(minute(120, keeper)).as("until something changes again").isFalse();
    }
}
