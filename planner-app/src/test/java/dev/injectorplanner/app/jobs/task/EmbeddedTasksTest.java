package dev.injectorplanner.app.jobs.task;

import static org.assertj.core.api.Assertions.assertThat;

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
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.RunOutcome;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreBackup;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.TableWriter;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jobs' real work on an embedded store with a tiny fleet. */
class EmbeddedTasksTest {
    private static final Instant DUE = Instant.parse("2026-03-02T23:30:00Z"); // past midnight in Riga

    @TempDir
    private Path folder;

    private Store store;
    private Planning planning;
    private final List<String> kept = new ArrayList<>();

    @BeforeEach
    void fill() throws Exception {
        Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        store = application.store();
        planning = application.planning();
        load(FleetFiles.write(OneOfEach.fleet(), Files.createDirectories(folder.resolve("files"))));
    }

    @AfterEach
    void close() {
        store.close();
    }

    private void load(List<Path> files) {
        assertThat(new Intake(store).load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT))
                .noneMatch(report -> report.anyRefused());
    }

    private JobRun run(JobKind kind, String depot, Instant due, JobTask task) {
        JobRuns runs = new JobRuns(store.dataSource(), InstantSource.system(), "test", Duration.ofMinutes(1));
        RunKey key = new RunKey(kind, depot, due);
        try (JobRunner frame = new JobRunner(
                runs,
                JobRegistry.builder().add(kind, task).build(),
                new DepotZones(store.dataSource()),
                (connection, failed) -> {},
                InstantSource.system())) {
            assertThat(frame.run(key, false, 0)).isTrue();
        }
        JobRun run = runs.find(key).orElseThrow();
        assertThat(run.outcome()).as(run.error()).isEqualTo(RunOutcome.DONE);
        return run;
    }

    private PlanKeeper keeper() {
        return (runKey, depot, at, planned, by) ->
                kept.add(runKey + " " + planned.plan().today());
    }

    @Test
    void the_nightly_plan_is_for_the_due_day_on_the_depots_calendar() {
        JobRun run = run(JobKind.NIGHTLY_PLAN, "North", DUE, new NightlyPlan(planning, keeper()));
        assertThat(kept).containsExactly("NIGHTLY_PLAN/North/2026-03-02T23:30:00Z 2026-03-03");
        assertThat(run.counts()).matches("due items \\d+, visits \\d+, without a visit \\d+, to order \\d+");
    }

    @Test
    void the_sweep_plans_a_depot_again_only_when_something_came_in() throws Exception {
        Sweep sweep = new Sweep(planning, keeper(), new NewRecords(store.dataSource()));
        run(JobKind.SWEEP, "", DUE, sweep);
        assertThat(kept).as("the first only notes how far").isEmpty();
        run(JobKind.SWEEP, "", DUE.plusSeconds(900), sweep);
        assertThat(kept).isEmpty();
        Path file = folder.resolve("more readings.csv");
        TableWriter.write(
                file,
                Tables.READINGS,
                List.of(new Reading("T-1", OneOfEach.MOMENT.plusSeconds(86_400), 400_000.0, null, false)));
        load(List.of(file));
        JobRun run = run(JobKind.SWEEP, "", DUE.plusSeconds(1_800), sweep);
        assertThat(kept).containsExactly("SWEEP//2026-03-03T00:00:00Z/North 2026-03-03");
        assertThat(run.counts()).startsWith("depots with news 1, records 1, due items ");
        run(JobKind.SWEEP, "", DUE.plusSeconds(2_700), sweep);
        assertThat(kept).hasSize(1);
    }

    @Test
    void a_refit_keeps_the_lives_and_counts_what_changed() {
        LifeRefit refit = new LifeRefit(planning, new RefittedLives(store.dataSource()));
        int lives = planning.plan(OneOfEach.DAY, dev.injectorplanner.core.plan.Policy.standard(), null)
                .plan()
                .lives()
                .size();
        assertThat(lives).isPositive();
        assertThat(run(JobKind.LIFE_REFIT, "", DUE, refit).counts())
                .startsWith("lives " + lives)
                .endsWith("new " + lives + ", changed 0");
        assertThat(run(JobKind.LIFE_REFIT, "", DUE.plusSeconds(60), refit).counts())
                .endsWith("new 0, changed 0");
        new StoreSql(store.dataSource())
                .retried(c -> StoreSql.update(
                        c, "update refitted_life set scale = scale * 2 where due_at = ?", DUE.plusSeconds(60)));
        assertThat(run(JobKind.LIFE_REFIT, "", DUE.plusSeconds(120), refit).counts())
                .endsWith("new 0, changed " + lives);
    }

    @Test
    void a_copy_made_while_others_write_opens_as_the_same_fleet_and_the_newest_stay() throws Exception {
        Path copies = folder.resolve("copies");
        AtomicReference<Instant> now = new AtomicReference<>(DUE);
        Backup backup = new Backup(store.dataSource(), copies, 2, now::get);
        Files.createDirectories(copies);
        Files.writeString(copies.resolve("notes.txt"), "not ours");
        Files.writeString(copies.resolve("planner-20260301T000000Z.zip"), "an older day's");
        Files.writeString(copies.resolve("planner-20260228T000000Z.zip.partial"), "of a run that was killed");
        Files.createDirectories(copies.resolve("planner-20260228T000000Z.zip.files"));
        for (int i = 0; i < 3; i++) {
            now.set(DUE.plusSeconds(i));
            run(JobKind.BACKUP, "", DUE.plusSeconds(i), backup);
        }
        try (Stream<Path> files = Files.list(copies)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "notes.txt", "planner-20260301T000000Z.zip", "planner-20260302T233002Z.zip");
        }
        Path restored = folder.resolve("restored");
        assertThat(StoreBackup.restore(copies.resolve("planner-20260302T233002Z.zip"), restored))
                .isPositive();
        try (Store copy = Store.open(StoreSettings.embedded(restored))) {
            assertThat(copy.snapshot()).isEqualTo(store.snapshot());
            assertThat(new JobRuns(copy.dataSource(), InstantSource.system(), "copy", Duration.ofMinutes(1))
                            .listNewest(9))
                    .as("the copy holds its own run, still under way")
                    .hasSize(3);
        }
    }
}
