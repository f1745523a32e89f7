package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.RunningApp;
import java.net.URI;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Sessions, forms, headers and refusals of the real application. */
@PlannerRuns
class SignInTest {
    private static final String OWN = "quiet lorry under rain";

    private static People people(RunningApp app) {
        return new People(app.application().store().dataSource(), new Pbkdf2Hashing());
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    @Test
    void the_session_gets_a_new_name_at_sign_in(URI address) throws Exception {
        Visitor visitor = Visitor.nobody(address);
        visitor.get("/sign-in");
        String before = visitor.session();
        visitor.signIn(Visitor.name(Role.MANAGER), Visitor.PASSWORD);
        assertThat(before).isNotEmpty();
        assertThat(visitor.session()).isNotEmpty().isNotEqualTo(before);
        assertThat(visitor.get("/trucks").statusCode()).isEqualTo(200);
    }

    @Test
    void the_cookie_is_out_of_reach_for_scripts_and_other_sites(URI address) throws Exception {
        String cookie = Visitor.nobody(address)
                .get("/sign-in")
                .headers()
                .firstValue("Set-Cookie")
                .orElseThrow();
        assertThat(cookie).startsWith("planner_session=").contains("HttpOnly", "SameSite=Lax");
    }

    @Test
    void wrong_name_wrong_password_and_disabled_look_alike(URI address, RunningApp app) throws Exception {
        people(app).add(new NewPerson("gone", Set.of(Role.BUYER), null), OWN, false, "test");
        people(app).setDisabled("gone", true, "test");
        Visitor visitor = Visitor.nobody(address);
        assertThat(location(visitor.signIn("buyer", "not the right one"))).isEqualTo("/sign-in?wrong");
        assertThat(location(visitor.signIn("no-such-person", OWN))).isEqualTo("/sign-in?wrong");
        assertThat(location(visitor.signIn("gone", OWN))).isEqualTo("/sign-in?wrong");
        assertThat(visitor.get("/sign-in?wrong").body()).contains("Name and password do not match.");
    }

    @Test
    void a_form_without_its_token_changes_nothing(URI address, RunningApp app) throws Exception {
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, address);
        HttpResponse<String> answer =
                administrator.postBare("/settings/people/add", "name=sneaked&role=manager&_csrf=guessed");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("This form has expired", "Fix:");
        assertThat(administrator
                        .postBare("/settings/people/add", "name=sneaked&role=manager")
                        .statusCode())
                .isEqualTo(403);
        assertThat(people(app).find("sneaked")).isEmpty();
    }

    @Test
    void who_guesses_has_to_wait_and_the_right_password_does_not_help_then(URI address, RunningApp app)
            throws Exception {
        people(app).add(new NewPerson("guessed", Set.of(Role.BUYER), null), OWN, false, "test");
        Visitor visitor = Visitor.nobody(address);
        for (int i = 0; i < 5; i++) {
            assertThat(location(visitor.signIn("guessed", "wrong one " + i))).isEqualTo("/sign-in?wrong");
        }
        String wait = location(visitor.signIn("Guessed", OWN));
        assertThat(wait).startsWith("/sign-in?wait=");
        assertThat(visitor.get(wait).body()).contains("Too many tries. Wait ", "minutes, then try again.");
        assertThat(people(app).find("guessed").orElseThrow().failedAttempts()).isEqualTo(5);
    }

    @Test
    void what_an_administrator_changes_holds_at_once(URI address, RunningApp app) throws Exception {
        people(app).add(new NewPerson("moved", Set.of(Role.MANAGER), null), OWN, false, "test");
        Visitor visitor = Visitor.as("moved", OWN, address);
        assertThat(visitor.get("/jobs").statusCode()).isEqualTo(200);
        people(app).change(new NewPerson("moved", Set.of(Role.BUYER), null), "test");
        assertThat(visitor.get("/jobs").statusCode()).isEqualTo(403);
        people(app).setDisabled("moved", true, "test");
        assertThat(location(visitor.get("/trucks"))).isEqualTo("/sign-in?ended");
        assertThat(location(visitor.get("/trucks"))).contains("/sign-in").doesNotContain("ended");
    }

    @Test
    void a_given_password_is_changed_first_and_ends_other_sessions(URI address, RunningApp app) throws Exception {
        people(app).add(new NewPerson("fresh", Set.of(Role.BUYER), null), OWN, true, "test");
        Visitor visitor = Visitor.as("fresh", OWN, address);
        Visitor elsewhere = Visitor.as("fresh", OWN, address);
        assertThat(location(visitor.get("/trucks"))).isEqualTo("/password");
        assertThat(change(visitor, OWN, "short", "short").body()).contains("is too short. Fix: use at least 12");
        assertThat(change(visitor, OWN, "my own is fresh now", "my own is fresh now")
                        .body())
                .contains("contains the name");
        assertThat(change(visitor, "not it at all", "a new one of four words", "a new one of four words")
                        .body())
                .contains("The current password is wrong");
        assertThat(location(change(visitor, OWN, "a new one of four words", "a new one of four words")))
                .isEqualTo("/sign-in?changed");
        assertThat(location(elsewhere.get("/trucks"))).isEqualTo("/sign-in?ended");
        assertThat(Visitor.as("fresh", "a new one of four words", address)
                        .get("/trucks")
                        .statusCode())
                .isEqualTo(200);
    }

    private static HttpResponse<String> change(Visitor visitor, String now, String next, String again)
            throws Exception {
        return visitor.post("/password", "/password", Map.of("now", now, "next", next, "again", again));
    }

    @Test
    void signing_out_ends_the_session(URI address) throws Exception {
        Visitor visitor = Visitor.as(Role.MANAGER, address);
        assertThat(location(visitor.post("/trucks", "/sign-out", Map.of()))).isEqualTo("/sign-in?out");
        assertThat(location(visitor.get("/trucks"))).contains("/sign-in");
    }

    @Test
    void a_mechanic_sees_the_own_depot_only(URI address, RunningApp app) throws Exception {
        people(app).add(new NewPerson("southerner", Set.of(Role.MECHANIC), Database.NORTH), OWN, false, "test");
        Visitor visitor = Visitor.as("southerner", OWN, address);
        assertThat(visitor.get("/trucks").body()).contains(", mechanic, " + Database.NORTH);
    }

    @Test
    void every_answer_carries_the_headers(URI address) throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        for (String path : new String[] {"/sign-in", "/trucks", "/jobs", "/elsewhere", "/planner.css"}) {
            var headers = manager.get(path).headers();
            assertThat(headers.firstValue("Content-Security-Policy").orElse(""))
                    .as(path)
                    .startsWith("default-src 'none'; style-src 'self'; script-src 'self';")
                    .contains("form-action 'self'", "frame-ancestors 'none'", "base-uri 'none'")
                    .doesNotContain("unsafe");
            assertThat(headers.firstValue("X-Content-Type-Options")).as(path).hasValue("nosniff");
            assertThat(headers.firstValue("X-Frame-Options")).as(path).hasValue("DENY");
            assertThat(headers.firstValue("Referrer-Policy")).as(path).hasValue("same-origin");
        }
        assertThat(manager.get("/trucks").headers().firstValue("Cache-Control").orElse(""))
                .contains("no-store");
    }

    @Test
    void pages_have_no_script_and_no_style_within(URI address) throws Exception {
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, address);
        for (String path : new String[] {
            "/sign-in", "/password", "/trucks", "/jobs", "/settings/people", "/settings/tokens", "/settings/audit"
        }) {
            HttpResponse<String> page = administrator.get(path);
            assertThat(page.statusCode()).as(path).isEqualTo(200);
            assertThat(Visitor.withoutOwnScript(page.body()))
                    .as(path)
                    .doesNotContain("<script", "style=\"", "<style", "onclick", "javascript:", "src=\"http");
        }
    }
}
