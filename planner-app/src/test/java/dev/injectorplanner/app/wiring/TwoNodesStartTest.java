package dev.injectorplanner.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.security.Pbkdf2Hashing;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.slf4j.LoggerFactory;

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
                assertThat(NodeClock.difference(one.store().dataSource(), InstantSource.system())
                                .abs())
                        .as("both clocks are this machine's")
                        .isLessThan(Duration.ofSeconds(2));
                NodeClock.await(one.store().dataSource());
                a_node_whose_clock_is_off_waits_for_as_long_as_another_is_at_work(
                        one.store().dataSource());
            }
        } finally {
            nodes.shutdownNow();
        }
    }

    private static void a_node_whose_clock_is_off_waits_for_as_long_as_another_is_at_work(DataSource pool)
            throws Exception {
        AtomicReference<Duration> ahead = new AtomicReference<>(Duration.ofSeconds(10));
        InstantSource clock = () -> Instant.now().plus(ahead.get());
        ListAppender<ILoggingEvent> log = new ListAppender<>();
        Logger logger = (Logger) LoggerFactory.getLogger(NodeClock.class);
        log.start();
        logger.addAppender(log);
        try {
            NodeClock.await(pool, clock, Duration.ofMillis(20)); // alone: said, and on it goes
            assertThat(log.list).hasSize(1);
            assertThat(log.list.get(0).getFormattedMessage())
                    .matches("This machine's clock is (9|10) s ahead of the database's\\. Fix: .*");

            otherAtWork(pool);
            Thread later = new Thread(() -> NodeClock.await(pool, clock, Duration.ofMillis(20)));
            later.start();
            later.join(500);
            assertThat(later.isAlive()).as("it waits").isTrue();
            ahead.set(Duration.ofSeconds(-1)); // set from a time server
            later.join(30_000);
            assertThat(later.isAlive()).isFalse();
            assertThat(log.list).as("said once").hasSize(2);
            assertThat(log.list.get(1).getFormattedMessage()).contains("another node is running, so this one waits");
        } finally {
            logger.detachAppender(log);
        }
    }

    private static void otherAtWork(DataSource pool) {
        new StoreSql(pool)
                .inTransaction(connection -> StoreSql.update(
                        connection,
                        "insert into qrtz_scheduler_state (sched_name, instance_name, last_checkin_time, checkin_interval)"
                                + " values ('planner', 'other', cast(extract(epoch from clock_timestamp()) * 1000 as bigint),"
                                + " 7500)"));
    }
}
