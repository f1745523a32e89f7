package dev.injectorplanner.app.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.plan.Policy;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What pages say of a plan that is made again while they are read. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LivePageTest {
    private static final Pattern STATE = Pattern.compile("data-state=\"(/week/state[^\"]*)\"");

    @TempDir
    private static Path folder;

    private DemoSite site;

    @BeforeAll
    void start() throws Exception {
        site = DemoSite.start(folder);
    }

    @AfterAll
    void stop() {
        site.close();
    }

    private String get(Visitor visitor, String path) throws Exception {
        var answer = visitor.get(path);
        assertThat(answer.statusCode()).as(path + " " + answer.body()).isEqualTo(200);
        return answer.body();
    }

    private static String stateOf(String page) {
        Matcher state = STATE.matcher(page);
        assertThat(state.find()).isTrue();
        return state.group(1).replace("&amp;", "&");
    }

    private String waitFor(Visitor visitor, String path, Predicate<String> said) throws Exception {
        Instant until = Instant.now().plus(Duration.ofSeconds(60));
        String body = get(visitor, path);
        while (!said.test(body)) {
            assertThat(Instant.now()).as(body).isBefore(until);
            Thread.sleep(100);
            body = get(visitor, path);
        }
        return body;
    }

    private void run(String key, String outcome, String counts) {
        new StoreSql(site.application().store().dataSource())
                .retried(connection -> StoreSql.update(
                        connection,
                        "insert into job_run (run_key, job, depot, due_at, by_hand, node, attempt, outcome, started_at,"
                                + " ended_at, lease_until, passed_over, counts) values (?, 'LIVE_PLAN', '', ?, false,"
                                + " 'test', 1, ?, ?, ?, ?, 0, ?)",
                        key,
                        Instant.now(),
                        outcome,
                        Instant.now(),
                        outcome.equals("RUNNING") ? null : Instant.now(),
                        outcome.equals("RUNNING") ? Instant.now().plus(Duration.ofHours(1)) : null,
                        counts));
    }

    @Test
    void a_page_says_that_its_plan_is_made_again_and_offers_the_new_one() throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, site.app().address());
        String week = get(manager, "/week");
        String state = stateOf(week);
        assertThat(week).contains("<script src=\"/live.js\" defer></script>");
        assertThat(get(manager, state)).doesNotContain("Replanning", "New plan");
        assertThat(stateOf(get(manager, "/plan"))).isEqualTo(state);

        run("live 1", "RUNNING", "all depots, plan 1 of 1, after close-out of truck T026, 2026-03-02 by ann");
        assertThat(get(manager, state))
                .contains(
                        "Replanning: all depots, plan 1 of 1, after close-out of truck T026, 2\u00a0Mar\u00a02026 by ann.")
                .contains("<a href=\"\">Look again</a>");
        assertThat(get(manager, "/plan"))
                .as("without scripts the page itself says it")
                .contains("Replanning: ");
        Visitor mechanic = Visitor.as(Role.MECHANIC, site.app().address());
        assertThat(get(mechanic, stateOf(get(mechanic, "/week"))))
                .as("trucks of other depots are not named to who sees one")
                .doesNotContain("T026");

        var planning = site.application().planning();
        var planned = planning.plan(
                site.application()
                        .plans()
                        .findInForce(DemoSite.HOME)
                        .orElseThrow()
                        .plan()
                        .today(),
                Policy.standard(),
                null);
        planning.keep("live 1/all", Instant.now(), planned, null, "replan after close-out of truck T026 by ann");
        assertThat(waitFor(manager, state, body -> body.contains("New plan of ")))
                .containsPattern("New plan of \\d\\d:\\d\\d is ready, made after close-out of truck T026 by ann\\.")
                .contains("<a href=\"\">Show it</a>");
        new StoreSql(site.application().store().dataSource())
                .retried(connection -> StoreSql.update(connection, "delete from job_run"));
        assertThat(get(manager, stateOf(get(manager, "/week"))))
                .as("the page as it is now")
                .doesNotContain("New plan");

        run("live 2", "GIVEN_UP", "");
        assertThat(get(manager, stateOf(get(manager, "/week"))))
                .contains("Replanning failed. This plan stays in force; Jobs says what went wrong.");
    }
}
