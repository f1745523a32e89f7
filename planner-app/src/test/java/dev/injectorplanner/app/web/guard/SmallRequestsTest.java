package dev.injectorplanner.app.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.RunningApp;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests that no browser sends, and one that every browser does. */
@PlannerRuns
class SmallRequestsTest {
    @Test
    void health_answers_a_browser(URI address) throws Exception {
        HttpResponse<String> answer = Visitor.nobody(address)
                .send(HttpRequest.newBuilder(address.resolve("/actuator/health"))
                        .header("Accept", "text/html"));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo("{\"status\":\"UP\"}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/trucks?find=%00", "/plan?depot=North%00", "/sign-in?wait=%00"})
    void a_zero_in_an_address_is_the_senders_fault(String path, URI address) throws Exception {
        assertThat(Visitor.as(Role.MANAGER, address).get(path).statusCode()).isEqualTo(400);
    }

    @Test
    void a_zero_in_a_form_is_the_senders_fault(URI address) throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        assertThat(manager.post("/plan", "/sign-in", Map.of("name", "a\0b", "password", "x"))
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void an_import_without_a_file_is_the_senders_fault(URI address) throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        assertThat(manager.post("/imports", "/imports", Map.of("mode", "check")).statusCode())
                .isEqualTo(400);
        assertThat(manager.post("/imports", "/imports", Map.of()).statusCode()).isEqualTo(400);
    }

    @Test
    void words_in_an_address_do_not_stand_on_a_page(URI address) throws Exception {
        for (String page : new String[] {"/plan", "/settings/figures", "/settings/site", "/settings/rules"}) {
            HttpResponse<String> answer =
                    Visitor.as(Role.MANAGER, address).get(page + "?done=Call+0900+now&said=Call+0900+now");
            assertThat(answer.statusCode()).as(page).isEqualTo(200);
            assertThat(answer.body()).doesNotContain("0900");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"rows\":[{\"truck\":\"T-1\",\"odometer_km\":1e999}]}|/rows/0/odometer_km is a number that is too large",
                "{\"rows\":[{\"truck\":\"T\\ud800\",\"odometer_km\":1}]}|/rows/0/truck holds half a character",
                "{\"rows\":[{\"tr\\udc00uck\":\"T-1\"}]}|/rows/0 has a name with half a character"
            })
    void json_that_cannot_be_stored_is_refused_with_its_place(String body, String said, URI address, RunningApp app)
            throws Exception {
        String token = token(app);
        HttpResponse<String> answer = Visitor.nobody(address)
                .send(HttpRequest.newBuilder(address.resolve("/api/v1/readings"))
                        .header("Authorization", "Bearer " + token)
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", "small-" + body.hashCode())
                        .POST(BodyPublishers.ofString(body)));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains(said);
    }

    private static String token(RunningApp app) {
        return new ApiTokens(app.application().store().dataSource())
                .make("small", Set.of(Scope.READINGS_WRITE), null, 1, "test")
                .secret();
    }
}
