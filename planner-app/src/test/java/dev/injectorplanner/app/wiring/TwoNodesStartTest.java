package dev.injectorplanner.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.security.Pbkdf2Hashing;
import dev.injectorplanner.app.store.StoreSettings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class TwoNodesStartTest {
    private static EmbeddedPostgres postgres;

    @BeforeAll
    static void start() throws Exception {
        postgres = EmbeddedPostgres.start();
    }

    @AfterAll
    static void stop() throws Exception {
        postgres.close();
    }

    private static StoreSettings settings() {
        return new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres");
    }

    @Test
    @Timeout(120)
    void two_at_once_on_an_empty_database_both_come_up_with_one_administrator() throws Exception {
        ExecutorService nodes = Executors.newFixedThreadPool(2);
        try {
            List<Future<Application>> opening = List.of(
                    nodes.submit(() -> Application.open(settings())), nodes.submit(() -> Application.open(settings())));
            try (Application one = opening.get(0).get();
                    Application other = opening.get(1).get()) {
                List<Future<Optional<String>>> passwords = new ArrayList<>();
                for (Application node : List.of(one, other)) {
                    passwords.add(nodes.submit(
                            () -> new People(node.store().dataSource(), new Pbkdf2Hashing()).findFirstPassword()));
                }
                long shown = 0;
                for (Future<Optional<String>> password : passwords) {
                    shown += password.get().isPresent() ? 1 : 0;
                }
                assertThat(shown).isEqualTo(1);
                assertThat(new People(other.store().dataSource(), new Pbkdf2Hashing()).list())
                        .hasSize(1);
                assertThat(NodeClock.difference(one.store().dataSource()).abs())
                        .as("both clocks are this machine's")
                        .isLessThan(Duration.ofSeconds(2));
                NodeClock.await(one.store().dataSource());
            }
        } finally {
            nodes.shutdownNow();
        }
    }
}
