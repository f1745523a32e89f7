package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.jobs.JobRuns;
import dev.injectorplanner.app.jobs.RunOutcome;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreBackup;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.HttpURLConnection;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Health and job history of the real application on the embedded store. */
@PlannerRuns
class JobsPageTest {
    private Visitor manager;

    private HttpResponse<String> get(URI address, String path) throws Exception {
        return manager(address).get(path);
    }

    private Visitor manager(URI address) throws Exception {
        if (manager == null) {
            manager = Visitor.as(Role.MANAGER, address);
        }
        return manager;
    }

    private HttpResponse<String> run(URI address, String kind, String depot, Instant due) throws Exception {
        return manager(address).post("/jobs", "/jobs/run", Map.of("kind", kind, "depot", depot, "due", due.toString()));
    }

    private static List<JobRun> runs(RunningApp app) {
        return new JobRuns(
                        app.application().store().dataSource(), InstantSource.system(), "test", Duration.ofMinutes(1))
                .listNewest(50);
    }

    private static JobRun ended(RunningApp app, String kind, Instant due) throws InterruptedException {
        while (true) {
            for (JobRun run : runs(app)) {
                if (run.key().due().equals(due)
                        && run.key().kind().option().equals(kind)
                        && run.outcome() != RunOutcome.RUNNING) {
                    return run;
                }
            }
            Thread.sleep(50);
        }
    }

    @Test
    void health_says_up_and_nothing_else(URI address) throws Exception {
        HttpResponse<String> answer = get(address, "/actuator/health");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo("{\"status\":\"UP\"}");
        assertThat(get(address, "/actuator").statusCode()).isEqualTo(403);
        assertThat(get(address, "/actuator/env").statusCode()).isEqualTo(403);
        assertThat(get(address, "/actuator/health/planner").statusCode()).isEqualTo(403);
    }

    @Test
    @Timeout(60)
    void the_administrator_sees_each_backup_with_the_command_that_restores_it(
            URI address, RunningApp app, @TempDir Path restored) throws Exception {
        Instant due = Instant.now().minusSeconds(7).truncatedTo(ChronoUnit.SECONDS);
        run(address, "backup", "", due);
        assertThat(ended(app, "backup", due).outcome()).isEqualTo(RunOutcome.DONE);

        String page = Visitor.as(Role.ADMINISTRATOR, address).get("/jobs").body();
        Matcher command = Pattern.compile("java -jar planner.jar restore (\\S+\\.zip) --data (\\S+?)<")
                .matcher(page);
        assertThat(command.find()).as(page).isTrue();
        assertThat(page).contains("java -jar planner.jar serve --data " + command.group(2));
        assertThat(StoreBackup.restore(Path.of(command.group(1)), restored.resolve("data")))
                .isPositive();
        assertThat(get(address, "/jobs").body()).doesNotContain("planner.jar restore");
    }

    @Test
    @Timeout(60)
    void a_job_run_by_hand_is_in_the_history_and_pressing_twice_is_one_run(URI address, RunningApp app)
            throws Exception {
        Instant due = Instant.now().minusSeconds(5).truncatedTo(ChronoUnit.SECONDS);
        for (int i = 0; i < 2; i++) {
            HttpResponse<String> answer = run(address, "nightly-plan", "North", due);
            assertThat(answer.statusCode()).isEqualTo(303);
            assertThat(answer.headers().firstValue("Location"))
                    .hasValueSatisfying(to -> assertThat(to).endsWith("/jobs"));
        }
        JobRun run = ended(app, "nightly-plan", due);
        assertThat(run.outcome()).as(run.error()).isEqualTo(RunOutcome.DONE);
        assertThat(run.byHand()).isTrue();
        assertThat(run.attempt()).isEqualTo(1);
        assertThat(run.counts()).startsWith("due items ").contains(", visits ");
        run(address, "nightly-plan", "North", due);
        Thread.sleep(300); // had it run again, it would show
        assertThat(runs(app).stream().filter(other -> other.key().due().equals(due)))
                .singleElement()
                .satisfies(only -> assertThat(only.attempt()).isEqualTo(1));
        assertThat(get(address, "/jobs").body())
                .contains("nightly plan, by hand", "North", "30 2 * * * Europe/Riga, planner default", run.counts());
    }

    @Test
    void what_is_wrong_is_said_with_a_way_to_mend_it(URI address) throws Exception {
        Instant due = Instant.now().minusSeconds(1);
        assertThat(run(address, "nightly-plan", "Nowhere", due))
                .returns(400, HttpResponse::statusCode)
                .satisfies(answer -> assertThat(answer.body())
                        .contains("depot &quot;Nowhere&quot;: is not known. Fix: choose one of North."));
        assertThat(run(address, "laundry", "", due).body()).contains("is not a job. Fix: choose from nightly-plan, ");
        assertThat(run(address, "backup", "North", due).body()).contains("runs for the whole fleet");
        assertThat(run(address, "nightly-plan", "", due).body()).contains("is missing");
        assertThat(run(address, "backup", "", due.plusSeconds(900)).body())
                .contains("is not a due time that has passed");
        HttpResponse<String> none = get(address, "/jobs/%3Cb%3E");
        assertThat(none.statusCode()).isEqualTo(404);
        assertThat(none.body()).contains("Page not found").doesNotContain("<b>", "Exception");
    }

    @Test
    void pages_forbid_what_they_do_not_need(URI address) throws Exception {
        HttpResponse<String> page = get(address, "/jobs");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                .startsWith("default-src 'none'");
        assertThat(Visitor.withoutOwnScript(page.body()).replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
                .doesNotContain("<script", "style=\"", "http://", "https://");
        assertThat(get(address, "/planner.css").statusCode()).isEqualTo(HttpURLConnection.HTTP_OK);
    }

    @Nested
    class Shared {
        @Test
        void nested_classes_share_the_application(URI address) throws Exception {
            assertThat(get(address, "/jobs").statusCode()).isEqualTo(200);
        }
    }
}
