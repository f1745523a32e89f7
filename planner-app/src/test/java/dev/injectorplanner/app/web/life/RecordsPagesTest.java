package dev.injectorplanner.app.web.life;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.DemoDay;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.FailureAnswer.Answer;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** What the records lack stands wherever chances do; a question is answered on a page; repairs stand in the truck's file. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class RecordsPagesTest {
    private static final String PART = "KV-8140";
    private static final String ASKED = "Is that so, or were failures not recorded?";

    @TempDir
    private static Path folder;

    private RunningApp app;
    private Visitor manager;

    @BeforeAll
    void start() throws Exception {
        Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        application
                .intake()
                .load(
                        SampleFiles.copyTo(Files.createDirectories(folder.resolve("files"))),
                        LoadSettings.of(Mode.GOOD_ROWS),
                        LoadListener.SILENT);
        new StoreSql(application.store().dataSource()).inTransaction(connection -> {
            StoreSql.update(
                    connection, "update injector set found = 'HEALTHY' where part = ? and found is not null", PART);
            StoreSql.update(connection, "delete from injector where truck = 'T010'");
            return StoreSql.update(
                    connection,
                    "delete from reading where truck = 'T011' and taken_at > ?",
                    DemoFleet.TODAY.minusDays(60).atStartOfDay().toInstant(ZoneOffset.UTC));
        });
        application
                .planning()
                .planAndKeep(
                        "demo",
                        Instant.now(),
                        DemoFleet.TODAY,
                        Policy.standard().withWeeks(6),
                        null);
        Visitor.addAll(application.store(), "Norrvik");
        app = WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(DemoDay.clock()));
        manager = Visitor.as(Role.MANAGER, app.address());
    }

    @AfterAll
    void stop() {
        app.close();
    }

    private String page(String path) throws Exception {
        return manager.get(path).body();
    }

    @Test
    @Order(1)
    void what_the_records_lack_stands_wherever_chances_and_counts_do() throws Exception {
        for (String path : new String[] {"/week", "/plan", "/order", "/life", "/coolant"}) {
            assertThat(page(path))
                    .as(path)
                    .contains("No " + PART + " failure since ", ASKED)
                    .contains("is not forecast: no injectors on record (T010)")
                    .contains("No meter reading for more than 30 days: T011 since ");
        }
        assertThat(page("/trucks/T010")).contains("Not forecast: no injectors on record");
        assertThat(page("/trucks/T011")).contains("Last read on ", "its forecast is less certain");
        assertThat(page("/life")).contains("prior alone", "It is so: none failed");
    }

    @Test
    @Order(2)
    void an_answer_is_kept_and_planned_by() throws Exception {
        manager.post("/life", "/life/answer", Map.of("part", PART, "answer", "NONE_FAILED"));
        assertThat(page("/week")).doesNotContain(ASKED);
        assertThat(page("/life"))
                .contains("none failed; the lives on record count. Answered by ")
                .contains(PART + ": failures were not recorded");
        assertThat(app.application().store().snapshot().failureAnswers())
                .extracting(FailureAnswer::part, FailureAnswer::answer)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(PART, Answer.NONE_FAILED));
    }

    @Test
    @Order(3)
    void a_repair_is_recorded_by_its_kind_and_stands_in_file_and_record() throws Exception {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("work", "injector connector");
        form.put("cylinder", "3");
        form.put("what", "clip renewed");
        form.put("done_on", DemoFleet.TODAY.toString());
        form.put("odometer", "512000");
        form.put("hours", "1.5");
        form.put("by", "Kim");
        manager.post("/safety/T012", "/safety/T012/repair", form);
        String words = "injector connector, cylinder 3; clip renewed";
        assertThat(page("/safety/T012")).contains("Recorded repairs", words);
        assertThat(page("/trucks/T012")).contains("repair: " + words, "by Kim, 1.5 h, at 512,000 km");
        assertThat(page("/trucks/T012/record")).contains("repair: " + words);
        assertThat(page("/trucks/T012/record.csv")).contains("repair: " + words);
    }

    @Test
    @Order(4)
    void the_demos_clock_goes_on_from_what_its_store_holds() {
        var store = app.application().store().dataSource();
        Instant morning = DemoDay.clock().instant();
        Instant evening = LocalDate.from(DemoFleet.TODAY).atTime(19, 0).toInstant(ZoneOffset.UTC);
        assertThat(DemoDay.clock(store).instant()).isAfterOrEqualTo(morning);
        new StoreSql(store)
                .inTransaction(connection -> StoreSql.update(connection, "update plan_run set kept_at = ?", evening));
        assertThat(DemoDay.clock(store).instant()).isBetween(evening, evening.plusSeconds(60));
    }
}
