package dev.injectorplanner.app.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.ApiTokens.NewToken;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.site.SettingKinds;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.TruckLogs;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.imports.j1939.TroubleCode;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The API of the real application, asked as another program would. */
@PlannerRuns
class ApiTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String TRUCK = OneOfEach.fleet().trucks().get(0).truck();

    private final HttpClient client = HttpClient.newHttpClient();

    private static String token(RunningApp app, Set<Scope> scopes, String depot) {
        return made(app, scopes, depot).secret();
    }

    private static NewToken made(RunningApp app, Set<Scope> scopes, String depot) {
        return new ApiTokens(app.application().store().dataSource()).make("test", scopes, depot, 1, "test");
    }

    private HttpResponse<String> get(URI address, String path, String token) throws Exception {
        return client.send(
                HttpRequest.newBuilder(address.resolve(path))
                        .header("Authorization", "Bearer " + token)
                        .build(),
                BodyHandlers.ofString());
    }

    private HttpResponse<String> post(URI address, String path, String token, String body, String... headers)
            throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(address.resolve(path))
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    private static String reading(String truck, String at, String km) {
        return "{\"rows\":[{\"truck\":\"" + truck + "\",\"taken_at\":\"" + at + "\",\"odometer_km\":" + km + "}]}";
    }

    @Test
    void rows_go_in_once_and_come_out_by_pages(URI address, RunningApp app) throws Exception {
        String token = token(app, EnumSet.of(Scope.READINGS_READ, Scope.READINGS_WRITE), null);
        String rows = "{\"rows\":["
                + "{\"truck\":\"" + TRUCK + "\",\"taken_at\":\"2027-05-01T06:00:00Z\",\"odometer_km\":900001.5},"
                + "{\"truck\":\"" + TRUCK + "\",\"taken_at\":\"2027-05-02T06:00:00Z\",\"odometer_km\":900101},"
                + "{\"truck\":\"" + TRUCK + "\",\"taken_at\":\"2027-05-03T06:00:00Z\",\"engine_hours\":20001}]}";
        JsonNode first =
                JSON.readTree(post(address, "/api/v1/readings", token, rows).body());
        assertThat(first.path("added").intValue()).as(first.toString()).isEqualTo(3);
        JsonNode again =
                JSON.readTree(post(address, "/api/v1/readings", token, rows).body());
        assertThat(again.path("unchanged").intValue()).as(again.toString()).isEqualTo(3);

        Set<String> seen = new TreeSet<>();
        String next = "";
        int pages = 0;
        do {
            JsonNode page = JSON.readTree(get(address, "/api/v1/readings?truck=" + TRUCK + "&limit=2" + next, token)
                    .body());
            page.path("items")
                    .forEach(item -> assertThat(seen.add(item.path("taken_at").stringValue()))
                            .isTrue());
            assertThat(page.path("items").size()).isBetween(1, 2);
            next = page.path("next").isNull()
                    ? ""
                    : "&cursor=" + page.path("next").stringValue();
            pages++;
        } while (!next.isEmpty());
        assertThat(pages).isGreaterThan(1);
        assertThat(seen).contains("2027-05-01T06:00:00Z", "2027-05-02T06:00:00Z", "2027-05-03T06:00:00Z");
    }

    @Test
    void faults_go_in_and_come_out(URI address, RunningApp app) throws Exception {
        String token = token(app, EnumSet.of(Scope.FAULTS_READ, Scope.FAULTS_WRITE), null);
        String rows = "{\"rows\":[{\"truck\":\"" + TRUCK
                + "\",\"seen_at\":\"2027-05-01T06:00:00Z\",\"code\":\"SPN 651 FMI 5\",\"count\":3}]}";
        assertThat(post(address, "/api/v1/faults", token, rows).body()).contains("\"added\":1");
        assertThat(get(address, "/api/v1/faults?truck=" + TRUCK, token).body())
                .contains("2027-05-01T06:00:00Z", "651", "\"count\":3");
    }

    @Test
    void a_refused_row_is_told_like_a_files_and_stores_nothing(URI address, RunningApp app) throws Exception {
        String token = token(app, EnumSet.of(Scope.READINGS_READ, Scope.READINGS_WRITE), null);
        String rows = "{\"rows\":["
                + "{\"truck\":\"" + TRUCK + "\",\"taken_at\":\"2027-06-01T06:00:00Z\",\"odometer_km\":910000},"
                + "{\"truck\":\"no-such\",\"taken_at\":\"2027-06-01T06:00:00Z\",\"odometer_km\":1}]}";
        HttpResponse<String> answer = post(address, "/api/v1/readings", token, rows);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        JsonNode problem = JSON.readTree(answer.body());
        assertThat(problem.path("reference").stringValue()).isNotBlank();
        JsonNode row = problem.path("problems").path(0);
        assertThat(row.path("row").intValue()).isEqualTo(2);
        assertThat(row.path("field").stringValue()).isEqualTo("truck");
        assertThat(row.path("fix").stringValue())
                .isNotBlank()
                .isEqualTo(row.path("mend").stringValue());
        assertThat(get(address, "/api/v1/readings?truck=" + TRUCK + "&limit=1000", token)
                        .body())
                .doesNotContain("2027-06-01");
    }

    @Test
    void a_key_is_answered_once(URI address, RunningApp app) throws Exception {
        String token = token(app, EnumSet.of(Scope.READINGS_WRITE), null);
        String body = reading(TRUCK, "2027-07-01T06:00:00Z", "920000");
        HttpResponse<String> first = post(address, "/api/v1/readings", token, body, "Idempotency-Key", "k1");
        HttpResponse<String> same = post(address, "/api/v1/readings", token, body, "Idempotency-Key", "k1");
        assertThat(first.body()).contains("\"added\":1");
        assertThat(same.body()).isEqualTo(first.body());
        HttpResponse<String> other = post(
                address,
                "/api/v1/readings",
                token,
                reading(TRUCK, "2027-07-02T06:00:00Z", "920100"),
                "Idempotency-Key",
                "k1");
        assertThat(other.statusCode()).isEqualTo(409);
        assertThat(other.body()).contains("Fix: use a new key");
        String others = token(app, EnumSet.of(Scope.READINGS_WRITE), null);
        assertThat(post(address, "/api/v1/readings", others, body, "Idempotency-Key", "k1")
                        .body())
                .contains("\"unchanged\":1");
    }

    @Test
    void a_token_is_good_for_its_scopes_until_it_is_revoked(URI address, RunningApp app) throws Exception {
        NewToken reads = made(app, EnumSet.of(Scope.READINGS_READ), null);
        String body = reading(TRUCK, "2027-08-01T06:00:00Z", "930000");
        assertThat(get(address, "/api/v1/readings?truck=" + TRUCK, reads.secret())
                        .statusCode())
                .isEqualTo(200);
        assertThat(post(address, "/api/v1/readings", reads.secret(), body).statusCode())
                .isEqualTo(403);
        for (String path : List.of("/api/v1/faults?truck=" + TRUCK, "/api/v1/plan?depot=North", "/api/v1/other")) {
            assertThat(get(address, path, reads.secret()).statusCode()).as(path).isEqualTo(403);
        }
        new ApiTokens(app.application().store().dataSource())
                .revoke(reads.token().id(), "test");
        HttpResponse<String> closed = get(address, "/api/v1/readings?truck=" + TRUCK, reads.secret());
        assertThat(closed.statusCode()).isEqualTo(401);
        assertThat(closed.headers().firstValue("WWW-Authenticate")).hasValue("Bearer");
        assertThat(closed.headers().firstValue("Set-Cookie")).isEmpty();
        assertThat(get(address, "/trucks", reads.secret()).statusCode()).isEqualTo(302);
    }

    @Test
    void a_depots_token_reaches_no_other_depot(URI address, RunningApp app) throws Exception {
        Depot north = OneOfEach.fleet().depots().get(0);
        try (StoreWriter writer = app.application().store().writer()) {
            Depot south = new Depot(
                    Database.SOUTH,
                    "South yard",
                    north.timeZone(),
                    1,
                    8,
                    north.workDays(),
                    BigDecimal.TEN,
                    BigDecimal.TEN,
                    0);
            writer.merge(Depot.class, List.of(south), true);
            writer.commit();
        }
        String token = token(app, EnumSet.allOf(Scope.class), Database.SOUTH);
        HttpResponse<String> sent =
                post(address, "/api/v1/readings", token, reading(TRUCK, "2027-09-01T06:00:00Z", "940000"));
        assertThat(sent.statusCode()).isEqualTo(422);
        assertThat(sent.body()).contains("is not a truck of depot South");
        assertThat(get(address, "/api/v1/readings?truck=" + TRUCK, token).statusCode())
                .isEqualTo(404);
        assertThat(get(address, "/api/v1/plan?depot=North", token).statusCode()).isEqualTo(404);
    }

    @Test
    void a_vehicle_log_becomes_faults_and_readings(URI address, RunningApp app) throws Exception {
        String token = token(app, EnumSet.allOf(Scope.class), null);
        Instant at = Instant.parse("2027-10-01T06:00:00Z");
        String log = new TruckLogs()
                .odometer(at, 950_000)
                .faults(at.plusSeconds(1), 30, 0, new TroubleCode(652, 5, 3, 0))
                .text();
        String path = "/api/v1/logs?name=night.log&truck=" + TRUCK;
        HttpResponse<String> sent = post(address, path, token, log);
        assertThat(sent.statusCode()).isEqualTo(200);
        assertThat(sent.body()).contains("{\"table\":\"readings\",\"read\":1,\"added\":1");
        assertThat(post(address, path, token, log).body())
                .contains("\"unchanged\":1")
                .doesNotContain("\"added\":1");
        assertThat(get(address, "/api/v1/faults?limit=1000&truck=" + TRUCK, token)
                        .body())
                .contains("\"code\":\"SPN 652 FMI 5\",\"cylinder\":2")
                .contains("\"last_seen_at\":\"2027-10-01T06:00:30Z\"");
    }

    /** 160,934.4 km are 100,000 miles exactly. */
    @Test
    void answers_in_the_sites_units_where_asked(URI address, RunningApp app) throws Exception {
        String token = token(app, EnumSet.of(Scope.READINGS_READ, Scope.READINGS_WRITE), null);
        post(address, "/api/v1/readings", token, reading(TRUCK, "2020-01-01T06:00:00Z", "160934.4"));
        var settings = app.application().settings();
        settings.set(SettingKinds.get("distance"), "miles", "test");
        try {
            String path = "/api/v1/readings?limit=1000&truck=" + TRUCK;
            assertThat(get(address, path + "&units=site", token).body())
                    .contains("\"odometer_mi\":100000.0")
                    .doesNotContain("odometer_km");
            assertThat(get(address, path, token).body())
                    .contains("\"odometer_km\":160934.4")
                    .doesNotContain("odometer_mi");
            assertThat(get(address, path + "&units=leagues", token).body())
                    .contains("units is neither metric nor site. Fix: ");
        } finally {
            settings.clear(SettingKinds.get("distance"), "test");
        }
    }

    @Test
    void a_vehicle_log_is_refused_in_one_sentence(URI address, RunningApp app) throws Exception {
        String token = token(app, EnumSet.allOf(Scope.class), null);
        String log = new TruckLogs()
                .faults(Instant.parse("2027-10-02T06:00:00Z"), 3, 0, new TroubleCode(652, 5, 3, 0))
                .text();
        HttpResponse<String> nobody = post(address, "/api/v1/logs?name=x.log", token, log);
        assertThat(nobody.statusCode()).isEqualTo(422);
        assertThat(nobody.body()).contains("cannot be given to a truck").contains("Fix: ");
        assertThat(post(address, "/api/v1/logs?name=x.log&truck=None", token, log)
                        .body())
                .contains("which is not known. Fix: ");
        String path = "/api/v1/logs?name=x.log&truck=" + TRUCK;
        assertThat(post(address, path, token, "hello").body()).contains("is not a log of bus frames. Fix: ");
        String faultsOnly = token(app, EnumSet.of(Scope.FAULTS_WRITE), null);
        assertThat(post(address, path, faultsOnly, log).statusCode()).isEqualTo(403);
    }

    @Test
    void what_cannot_be_read_is_said_with_a_way_to_mend_it(URI address, RunningApp app) throws Exception {
        String token = token(app, EnumSet.allOf(Scope.class), null);
        for (String body : List.of(
                "nonsense",
                "{}",
                "{\"rows\":[]}",
                "{\"rows\":[1]}",
                "{\"rows\":[{\"truck\":\"T\",\"weight\":1}]}",
                "{\"rows\":[{\"truck\":{}}]}")) {
            HttpResponse<String> answer = post(address, "/api/v1/readings", token, body);
            assertThat(answer.statusCode()).as(body).isEqualTo(400);
            assertThat(answer.body()).as(body).contains("Fix: ").doesNotContain("Exception");
        }
        assertThat(get(address, "/api/v1/readings", token).body()).contains("Parameter truck is missing. Fix:");
        assertThat(get(address, "/api/v1/readings?truck=" + TRUCK + "&limit=0", token)
                        .body())
                .contains("limit is not a number from 1 to 1000. Fix:");
        assertThat(get(address, "/api/v1/readings?truck=" + TRUCK + "&cursor=%25", token)
                        .body())
                .contains("cursor was not issued here. Fix:");
    }

    @Test
    void the_description_tells_every_address_and_every_column(URI address) throws Exception {
        JsonNode description =
                JSON.readTree(get(address, "/api/v1/openapi.json", "none").body());
        Set<String> described = new TreeSet<>();
        description
                .path("paths")
                .properties()
                .forEach(path ->
                        path.getValue().propertyNames().forEach(method -> described.add(method + " " + path.getKey())));
        Set<String> there = new TreeSet<>();
        for (Method method : Stream.of(ApiPage.class, CloseOutApi.class, LogApi.class, ShopApi.class)
                .flatMap(type -> Stream.of(type.getDeclaredMethods()))
                .toList()) {
            GetMapping get = method.getAnnotation(GetMapping.class);
            PostMapping post = method.getAnnotation(PostMapping.class);
            if (get != null) {
                there.add("get " + get.path()[0]);
            }
            if (post != null) {
                there.add("post " + post.path()[0]);
            }
        }
        assertThat(described).isEqualTo(there);
        assertThat(fields(description, "reading")).isEqualTo(columns(Tables.READINGS));
        assertThat(fields(description, "fault")).isEqualTo(columns(Tables.FAULTS));
    }

    private static List<String> fields(JsonNode description, String schema) {
        return List.copyOf(description
                .path("components")
                .path("schemas")
                .path(schema)
                .path("properties")
                .propertyNames());
    }

    private static List<String> columns(Table<?> table) {
        return table.columns().stream().map(Column::name).toList();
    }
}
