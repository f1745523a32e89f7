package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.testkit.PlannerRuns;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import org.junit.jupiter.api.Test;

@PlannerRuns(on = PlannerRuns.Database.POSTGRES)
class PostgresJobsTest {
    private final HttpClient client = HttpClient.newHttpClient();

    private String get(URI address) throws Exception {
        return client.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString())
                .body();
    }

    @Test
    void serves_on_postgresql_where_copies_are_the_databases_own(URI address) throws Exception {
        assertThat(get(address.resolve("/actuator/health"))).isEqualTo("{\"status\":\"UP\"}");
        assertThat(get(address.resolve("/jobs"))).contains("Not set up here: backup.", "nightly plan", "North");
    }
}
