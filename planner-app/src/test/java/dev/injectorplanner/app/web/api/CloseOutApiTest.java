package dev.injectorplanner.app.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.core.fleet.Depot;
import java.math.BigDecimal;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A workshop program that closes visits out and reads the record back. JSON pointers: RFC 6901; problems: RFC 9457. */
@PlannerRuns
class CloseOutApiTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String PATH = "/api/v1/close-outs";
    private static final Set<Scope> BOTH = EnumSet.of(Scope.CLOSE_OUTS_READ, Scope.CLOSE_OUTS_WRITE);

    private final HttpClient client = HttpClient.newHttpClient();

    private static String token(RunningApp app, Set<Scope> scopes, String depot) {
        return new ApiTokens(app.application().store().dataSource())
                .make("workshop", scopes, depot, 1, "test")
                .secret();
    }

    private HttpResponse<String> send(URI address, String token, String key, String body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(address.resolve(PATH))
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body));
        if (!key.isEmpty()) {
            request.header("Idempotency-Key", key);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> ask(URI address, String token, String query) throws Exception {
        return client.send(
                HttpRequest.newBuilder(address.resolve(PATH + query))
                        .header("Authorization", "Bearer " + token)
                        .build(),
                BodyHandlers.ofString());
    }

    private static String fitted(String truck, int cylinder, String serial, String code) {
        return """
                {"truck":"%s","done_on":"2026-03-10","labour_hours":4.5,"tasks":["fuel filter"],
                 "cylinders":[{"cylinder":%d,"fitted":true,"found":"worn","serial":"%s","code":"%s",
                               "programmed":true,"read_back":"%s"}],
                 "used":[{"part":"SEAL-1","pieces":2}],
                 "tests":[{"cylinder":%d,"test":"balance","value":0.5,"unit":"mm3/stroke","engine_state":"warm idle"}]}
                """.formatted(truck, cylinder, serial, code, code, cylinder);
    }

    @Test
    void a_visit_is_closed_out_once_and_read_back(URI address, RunningApp app) throws Exception {
        String token = token(app, BOTH, null);
        String body = fitted("T-1", 2, "API-2", "CD34");
        HttpResponse<String> first = send(address, token, "visit-1", body);
        assertThat(first.statusCode()).as(first.body()).isEqualTo(201);
        assertThat(send(address, token, "visit-1", body).body()).isEqualTo(first.body());
        assertThat(send(address, token, "visit-1", fitted("T-1", 3, "API-3", "EF56"))
                        .statusCode())
                .isEqualTo(409);
        JsonNode record = JSON.readTree(first.body());
        assertThat(record.path("version").intValue()).isEqualTo(1);
        assertThat(record.path("cylinders").path(0).path("code").stringValue()).isEqualTo("CD34");
        assertThat(record.path("made_by").stringValue()).startsWith("token ");
        JsonNode items = JSON.readTree(ask(address, token, "?truck=T-1").body()).path("items");
        assertThat(Stream.iterate(0, at -> at < items.size(), at -> at + 1)
                        .map(at -> items.path(at).path("close_out").longValue()))
                .containsOnlyOnce(record.path("close_out").longValue());
        assertThat(app.application().store().snapshot().injectors())
                .filteredOn(row -> "API-2".equals(row.serial()) && row.removedOn() == null)
                .singleElement()
                .satisfies(row -> assertThat(row.calibrationCode()).isEqualTo("CD34"));
    }

    @Test
    void a_correction_takes_its_place(URI address, RunningApp app) throws Exception {
        String token = token(app, BOTH, null);
        JsonNode first = JSON.readTree(
                send(address, token, "c-1", fitted("T-2", 1, "API-4", "GH78")).body());
        String right = fitted("T-2", 1, "API-5", "IJ90").strip();
        String correction = right.substring(0, right.length() - 1) + ",\"corrects\":"
                + first.path("close_out").longValue() + ",\"why\":\"wrong serial read from the box\"}";
        JsonNode second = JSON.readTree(send(address, token, "c-2", correction).body());
        assertThat(second.path("version").intValue()).as(second.toString()).isEqualTo(2);
        assertThat(send(address, token, "c-3", correction).statusCode())
                .as("not the one that holds any more")
                .isEqualTo(422);
        JsonNode page = JSON.readTree(ask(address, token, "?truck=T-2&limit=1").body());
        assertThat(page.path("items").path(0).path("corrected_by").longValue())
                .isEqualTo(second.path("close_out").longValue());
        JsonNode next = JSON.readTree(ask(
                        address,
                        token,
                        "?truck=T-2&limit=1&cursor=" + page.path("next").stringValue())
                .body());
        assertThat(next.path("items").path(0).path("why").stringValue()).isEqualTo("wrong serial read from the box");
        assertThat(next.path("next").isNull()).isTrue();
    }

    /** Code too short for its part's pattern, read back different, and a task that the family does not have. */
    @Test
    void the_hour_is_taken_and_a_close_out_is_voided_once(URI address, RunningApp app) throws Exception {
        String token = token(app, BOTH, null);
        String body = "{\"truck\":\"T-2\",\"done_on\":\"2026-03-13\",\"labour_hours\":1,\"finished_at\":\"14:30\"}";
        JsonNode made = JSON.readTree(send(address, token, "hour", body).body());
        assertThat(made.path("finished_at").stringValue()).isEqualTo("2026-03-13T12:30:00Z"); // Riga in winter: UTC+2
        assertThat(made.path("voided_at").isNull()).isTrue();
        assertThat(send(address, token, "no hour", body.replace("14:30", "half past two"))
                        .statusCode())
                .isEqualTo(400);
        String voids = "{\"truck\":\"T-2\",\"voids\":" + made.path("close_out").longValue() + ",\"why\":\"%s\"}";
        HttpResponse<String> without = send(address, token, "void 1", voids.formatted(""));
        assertThat(without.statusCode()).isEqualTo(422);
        assertThat(without.body()).contains("reason for voiding it: is empty");
        HttpResponse<String> done = send(address, token, "void 2", voids.formatted("another truck"));
        assertThat(done.statusCode()).as(done.body()).isEqualTo(201);
        assertThat(JSON.readTree(done.body()).path("void_reason").stringValue()).isEqualTo("another truck");
        assertThat(JSON.readTree(send(address, token, "void 3", voids.formatted("again"))
                                .body())
                        .path("void_reason")
                        .stringValue())
                .as("void already")
                .isEqualTo("another truck");
    }

    @Test
    void what_is_refused_is_told_by_its_place_and_keeps_nothing(URI address, RunningApp app) throws Exception {
        String token = token(app, BOTH, null);
        String bad = fitted("T-1", 4, "API-6", "X1")
                .replace("\"read_back\":\"X1\"", "\"read_back\":\"X2\"")
                .replace("fuel filter", "polish")
                .replace("2026-03-10", "2999-01-01");
        HttpResponse<String> answer = send(address, token, "bad", bad);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        JsonNode problems = JSON.readTree(answer.body()).path("problems");
        assertThat(problems.findValuesAsString("field"))
                .contains("/done_on", "/tasks", "/cylinders/0/code", "/cylinders/0/read_back");
        assertThat(problems.findValuesAsString("detail"))
                .allSatisfy(words -> assertThat(words).contains("Fix: "));
        assertThat(new CloseOuts(app.application().store()).ofTruck("T-1"))
                .noneMatch(row -> row.cylinders().stream().anyMatch(done -> "API-6".equals(done.serial())));
        assertThat(send(address, token, "bad", fitted("T-1", 4, "API-7", "KL12"))
                        .statusCode())
                .as("a key of a refused request may be used again")
                .isEqualTo(201);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            nonsense                                            | The body is not JSON
            []                                                  | The body is not a JSON object
            {"truck":"T-1","colour":"red"}                      | /colour is not known
            {"truck":7}                                         | /truck is not text
            {"done_on":"2026-03-10"}                            | /truck is missing
            {"truck":"T-1","done_on":"10.03.2026"}              | /done_on is not a date
            {"truck":"T-1","labour_hours":"4"}                  | /labour_hours is not a number
            {"truck":"T-1","meter_replaced":"no"}               | /meter_replaced is neither true nor false
            {"truck":"T-1","cylinders":{}}                      | /cylinders is not a list
            {"truck":"T-1","cylinders":[{"cylinder":"1"}]}      | /cylinders/0/cylinder is not a whole number
            {"truck":"T-1","cylinders":[{"cylinder":0}]}        | /cylinders/0/cylinder is not a cylinder
            {"truck":"T-1","cylinders":[{"cylinder":1,"found":"broken"}]} | /cylinders/0/found is not an allowed value
            {"truck":"T-1","tasks":[1]}                         | /tasks/0 is not text
            {"truck":"T-1","tests":[{"cylinder":1,"test":"balance","unit":"mm3"}]} | has no value
            """)
    void what_cannot_be_read_is_said_with_its_place(String body, String words, URI address, RunningApp app)
            throws Exception {
        HttpResponse<String> answer = send(address, token(app, BOTH, null), "read", body);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(JSON.readTree(answer.body()).path("detail").stringValue())
                .startsWith(words.startsWith("has") ? "" : words)
                .contains(words, "Fix: ");
    }

    @Test
    void a_key_that_comes_again_after_its_answer_was_forgotten_loses_no_close_out(URI address, RunningApp app)
            throws Exception {
        String token = token(app, BOTH, null);
        String first = "{\"truck\":\"T-1\",\"done_on\":\"2026-03-11\",\"labour_hours\":1}";
        JsonNode kept = JSON.readTree(send(address, token, "job 7", first).body());
        new StoreSql(app.application().store().dataSource())
                .inTransaction(connection -> StoreSql.update(connection, "delete from api_answer"));
        HttpResponse<String> again = send(address, token, "job 7", first);
        assertThat(JSON.readTree(again.body()).path("close_out")).isEqualTo(kept.path("close_out"));
        HttpResponse<String> other = send(address, token, "job 7", first.replace("03-11", "03-12"));
        assertThat(other.statusCode()).as(other.body()).isEqualTo(409);
        assertThat(other.body()).contains("Fix: use a new key");
    }

    @Test
    void a_token_of_the_longest_name_closes_out_too(URI address, RunningApp app) throws Exception {
        String token = new ApiTokens(app.application().store().dataSource())
                .make("workshop ".repeat(7).substring(0, 60), BOTH, null, 1, "test")
                .secret();
        String body = "{\"truck\":\"T-2\",\"done_on\":\"2026-03-11\",\"labour_hours\":1}";
        assertThat(send(address, token, "long", body).statusCode()).isEqualTo(201);
    }

    @Test
    void weeks_and_tasks_are_held_to_what_plans_say(URI address, RunningApp app) throws Exception {
        String token = token(app, BOTH, null);
        for (String week : List.of("2026-03-02", "W12", "2026W12")) {
            String body = "{\"truck\":\"T-2\",\"week\":\"" + week
                    + "\",\"done_on\":\"2026-03-11\",\"labour_hours\":1,\"tasks\":[\"fuel filter\",\"fuel filter\"]}";
            HttpResponse<String> answer = send(address, token, "w " + week, body);
            assertThat(answer.statusCode()).as(week).isEqualTo(422);
            assertThat(JSON.readTree(answer.body()).path("problems").findValuesAsString("field"))
                    .containsExactlyInAnyOrder("/week", "/tasks");
        }
    }

    /** A body full of blanks must not keep the server busy. */
    @Test
    @Timeout(20)
    void extras_of_many_lines_become_one(URI address, RunningApp app) throws Exception {
        String token = token(app, BOTH, null);
        String start = "{\"truck\":\"T-2\",\"done_on\":\"2026-03-11\",\"labour_hours\":1,\"extras\":\"clip";
        HttpResponse<String> kept = send(address, token, "lines", start + "  \\r\\n \\n  renewed\"}");
        assertThat(JSON.readTree(kept.body()).path("extras").stringValue()).isEqualTo("clip / renewed");
        HttpResponse<String> blanks = send(address, token, "blanks", start + " ".repeat(400_000) + "x\"}");
        assertThat(blanks.statusCode()).isEqualTo(422);
    }

    @Test
    void a_key_is_asked_for_and_scope_and_depot_hold(URI address, RunningApp app) throws Exception {
        String body = fitted("T-2", 3, "API-8", "MN34");
        HttpResponse<String> keyless = send(address, token(app, BOTH, null), "", body);
        assertThat(keyless.statusCode()).isEqualTo(400);
        assertThat(keyless.body()).contains("Idempotency-Key is missing");
        assertThat(send(address, token(app, EnumSet.of(Scope.CLOSE_OUTS_READ), null), "k", body)
                        .statusCode())
                .isEqualTo(403);
        Depot north = OneOfEach.fleet().depots().get(0);
        try (StoreWriter writer = app.application().store().writer()) {
            writer.merge(
                    Depot.class,
                    List.of(new Depot(
                            Database.SOUTH,
                            "South yard",
                            north.timeZone(),
                            1,
                            8,
                            north.workDays(),
                            BigDecimal.TEN,
                            BigDecimal.TEN,
                            0)),
                    true);
            writer.commit();
        }
        String south = token(app, BOTH, Database.SOUTH);
        assertThat(send(address, south, "k", body).statusCode()).isEqualTo(404);
        assertThat(ask(address, south, "?truck=T-2").statusCode()).isEqualTo(404);
        assertThat(ask(address, token(app, EnumSet.of(Scope.CLOSE_OUTS_WRITE), null), "?truck=T-2")
                        .statusCode())
                .isEqualTo(403);
    }
}
