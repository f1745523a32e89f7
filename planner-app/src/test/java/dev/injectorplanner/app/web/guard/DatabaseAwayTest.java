package dev.injectorplanner.app.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.Relay;
import dev.injectorplanner.app.testkit.Served;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.RunningApp;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** PostgreSQL is stopped while the application runs, and comes back. */
class DatabaseAwayTest {
    @Test
    @Timeout(120)
    void pages_and_health_say_so_at_once_and_go_on_once_it_is_back() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start();
                Relay relay = new Relay(postgres.getPort())) {
            StoreSettings through = new StoreSettings(
                    "jdbc:postgresql://127.0.0.1:" + relay.port() + "/postgres", "postgres", "postgres");
            try (RunningApp app = Served.on(through)) {
                Visitor manager = Visitor.as(Role.MANAGER, app.address());
                assertThat(quick(manager, app.address(), "/trucks").statusCode())
                        .isEqualTo(200);
                relay.shut();
                HttpResponse<String> first = quick(manager, app.address(), "/trucks");
                assertThat(first.statusCode())
                        .as("also before the watch has seen it")
                        .isEqualTo(503);
                untilHealth(manager, app.address(), 503);
                saysSo(manager, app.address());
                relay.openAgain();
                untilHealth(manager, app.address(), 200);
                assertThat(quick(manager, app.address(), "/trucks").statusCode())
                        .isEqualTo(200);
            }
        }
    }

    private static void saysSo(Visitor manager, URI address) throws Exception {
        HttpResponse<String> page = quick(manager, address, "/trucks");
        assertThat(page.statusCode()).isEqualTo(503);
        assertThat(page.body())
                .contains("The database does not answer", "Reference: ", "Fix: ")
                .doesNotContain("Exception", "\tat ");
        HttpResponse<String> api = quick(manager, address, "/api/v1/plan?depot=North");
        assertThat(api.statusCode()).isEqualTo(503);
        assertThat(api.body()).contains("\"reference\":\"", "The database does not answer");
        HttpResponse<String> sent = manager.postBare("/sign-in", Visitor.form(Map.of("name", "x", "password", "y")));
        assertThat(sent.statusCode()).isEqualTo(503);
    }

    private static HttpResponse<String> quick(Visitor visitor, URI address, String path) throws Exception {
        return visitor.send(HttpRequest.newBuilder(address.resolve(path))
                .header("Accept", "text/html")
                .timeout(Duration.ofSeconds(15)));
    }

    private static void untilHealth(Visitor visitor, URI address, int status) throws Exception {
        int seen = 0;
        for (int tries = 0; tries < 200 && seen != status; tries++) {
            seen = visitor.send(HttpRequest.newBuilder(address.resolve("/actuator/health"))
                            .timeout(Duration.ofSeconds(5)))
                    .statusCode();
            Thread.sleep(100);
        }
        assertThat(seen).isEqualTo(status);
    }
}
