package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.Served;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.InstantSource;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Two nodes on one PostgreSQL: who is signed in at one is so at both, and tries to guess a password count at both. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SharedSessionsTest {
    private EmbeddedPostgres postgres;
    private RunningApp one;
    private RunningApp other;

    @BeforeAll
    void start() throws Exception {
        postgres = EmbeddedPostgres.start();
        one = Served.on(settings());
        other = node();
    }

    private StoreSettings settings() {
        return new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres");
    }

    private RunningApp node() {
        return WebApp.start(
                CompletableFuture.completedFuture(Application.open(settings())),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(InstantSource.system()));
    }

    @AfterAll
    void stop() throws Exception {
        other.close();
        one.close();
        postgres.close();
    }

    private static HttpResponse<String> get(Visitor visitor, RunningApp node, String path) throws Exception {
        return visitor.send(HttpRequest.newBuilder(node.address().resolve(path)).header("Accept", "text/html"));
    }

    @Test
    void whoSignedInAtOneNodeIsKnownToTheOtherAndAfterItIsLost() throws Exception {
        try (RunningApp lost = node()) {
            Visitor manager = Visitor.as(Role.MANAGER, lost.address());
            assertThat(get(manager, other, "/trucks").statusCode()).isEqualTo(200);
            lost.close();
            assertThat(get(manager, one, "/trucks").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void aFormOfOneNodeMayBeSentToTheOther() throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, one.address());
        String token = manager.csrf("/trucks");
        HttpResponse<String> out =
                manager.send(HttpRequest.newBuilder(other.address().resolve("/sign-out"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(Visitor.form(Map.of("_csrf", token)))));
        assertThat(out.statusCode()).isEqualTo(302);
        assertThat(get(manager, one, "/trucks").headers().firstValue("Location"))
                .as("signed out at both")
                .hasValueSatisfying(to -> assertThat(to).contains("/sign-in"));
    }

    @Test
    void triesToGuessAPasswordCountAtBoth() throws Exception {
        for (int tries = 0; tries < 5; tries++) {
            URI node = (tries % 2 == 0 ? one : other).address();
            assertThat(Visitor.nobody(node)
                            .signIn("buyer", "wrong " + tries)
                            .headers()
                            .firstValue("Location"))
                    .hasValueSatisfying(to -> assertThat(to).doesNotContain("wait"));
        }
        for (RunningApp node : new RunningApp[] {one, other}) {
            Visitor next = Visitor.nobody(node.address());
            String to = next.signIn("buyer", Visitor.PASSWORD)
                    .headers()
                    .firstValue("Location")
                    .orElse("");
            assertThat(next.get(to.substring(to.indexOf("/sign-in"))).body()).contains("Too many tries");
        }
        try (Application application = Application.open(settings())) {
            assertThat(new StoreSql(application.store().dataSource())
                            .list("select id from sign_in_tries", row -> row.getString(1)))
                    .isNotEmpty()
                    .allMatch(id -> id.matches("[0-9a-f]{64}"));
        }
    }

    /** What another release wrote into a session is no page's trouble: the person signs in again. */
    @Test
    void aSessionThatCannotBeReadAsksToSignInAgain() throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, one.address());
        try (Application application = Application.open(settings())) {
            new StoreSql(application.store().dataSource())
                    .retried(connection -> StoreSql.update(
                            connection,
                            "update page_session_attributes set attribute_bytes = ? where attribute_name = ?",
                            new byte[] {1, 2, 3},
                            "SPRING_SECURITY_CONTEXT"));
        }
        HttpResponse<String> page = get(manager, one, "/trucks");
        assertThat(page.statusCode()).isEqualTo(302);
        assertThat(page.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).contains("/sign-in"));
    }
}
