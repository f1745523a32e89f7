package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.jobs.JobRuns;
import dev.injectorplanner.app.jobs.RunOutcome;
import dev.injectorplanner.app.testkit.PlannerRuns;
import java.net.HttpURLConnection;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Health and job history of the real application on the embedded store. */
@PlannerRuns
class JobsPageTest {
    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<String> get(URI address, String path) throws Exception {
        return client.send(HttpRequest.newBuilder(address.resolve(path)).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> run(URI address, String kind, String depot, Instant due, String... headers)
            throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(address.resolve("/jobs/run"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("kind=" + kind + "&depot=" + depot + "&due="
                        + URLEncoder.encode(due.toString(), StandardCharsets.UTF_8)));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), BodyHandlers.ofString());
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
        assertThat(get(address, "/actuator").statusCode()).isEqualTo(404);
        assertThat(get(address, "/actuator/env").statusCode()).isEqualTo(404);
        assertThat(get(address, "/actuator/health/planner").statusCode()).isEqualTo(404);
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
        assertThat(run.counts()).startsWith("findings ").contains(", visits ");
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
                        .contains("depot &quot;Nowhere&quot;: is not known. Mend: choose one of North."));
        assertThat(run(address, "laundry", "", due).body()).contains("is no job. Mend: choose among nightly-plan, ");
        assertThat(run(address, "backup", "North", due).body()).contains("runs for the whole fleet");
        assertThat(run(address, "nightly-plan", "", due).body()).contains("is missing");
        assertThat(run(address, "backup", "", due.plusSeconds(900)).body()).contains("is no moment that has come");
        HttpResponse<String> none = client.send(
                HttpRequest.newBuilder(address.resolve("/%3Cb%3E"))
                        .header("Accept", "text/html")
                        .build(),
                BodyHandlers.ofString());
        assertThat(none.statusCode()).isEqualTo(404);
        assertThat(none.body()).contains("There is no such page").doesNotContain("<b>", "Exception");
    }

    @Test
    void other_sites_and_borrowed_names_are_refused(URI address, RunningApp app) throws Exception {
        Instant due = Instant.now().minusSeconds(1);
        int before = runs(app).size();
        assertThat(run(address, "backup", "", due, "Origin", "http://elsewhere.example")
                        .statusCode())
                .isEqualTo(403);
        assertThat(run(address, "backup", "", due, "Sec-Fetch-Site", "cross-site")
                        .statusCode())
                .isEqualTo(403);
        assertThat(runs(app)).hasSize(before);
        assertThat(withHost(address, "elsewhere.example")).isEqualTo(403);
        assertThat(withHost(address, "localhost:" + address.getPort())).isEqualTo(200);
    }

    /** The library's client sets the host itself, so this is written by hand. */
    private static int withHost(URI address, String host) throws Exception {
        try (var socket = new java.net.Socket(address.getHost(), address.getPort())) {
            socket.getOutputStream()
                    .write(("GET /jobs HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            String status = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return Integer.parseInt(status.substring(9, 12));
        }
    }

    @Test
    void pages_forbid_what_they_do_not_need(URI address) throws Exception {
        HttpResponse<String> page = get(address, "/jobs");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                .startsWith("default-src 'none'");
        assertThat(page.body()).doesNotContain("<script", "style=\"", "http://", "https://");
        assertThat(get(address, "/plain.css").statusCode()).isEqualTo(HttpURLConnection.HTTP_OK);
    }

    @Nested
    class Shared {
        @Test
        void nested_classes_share_the_application(URI address) throws Exception {
            assertThat(get(address, "/jobs").statusCode()).isEqualTo(200);
        }
    }
}
