package dev.injectorplanner.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.calendar.CalendarFeeds;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.stock.GoodsIn;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.visit.Visit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each route with somebody who sees all depots and somebody who sees one. The table is written by hand: "ok" is a page,
 * "no" a refusal in words (400, 403, 404, 422). Whatever comes back, nothing in it names another depot, its trucks, VINs,
 * serials or codes; and what is refused changes nothing. OTHER is a truck of another depot with a visit, OWN one of the
 * viewer's own.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DepotScopeTest {
    private static final String ELSEWHERE = "Brennick";
    private static final String OWN_PASSWORD = "quiet lorry under rain";

    @TempDir
    private static Path folder;

    private DemoSite site;
    private Visitor all;
    private Visitor mechanic;
    private Visitor manager;
    private Pattern secrets;
    private final Map<String, String> names = new LinkedHashMap<>();

    @BeforeAll
    void start() throws Exception {
        site = DemoSite.start(folder);
        new People(site.application().store().dataSource(), new Pbkdf2Hashing())
                .add(
                        new NewPerson("norrvik-manager", Set.of(Role.MANAGER), DemoSite.HOME),
                        OWN_PASSWORD,
                        false,
                        "test");
        all = Visitor.as(Role.MANAGER, site.app().address());
        mechanic = Visitor.as(Role.MECHANIC, site.app().address());
        manager = Visitor.as("norrvik-manager", OWN_PASSWORD, site.app().address());
        FleetSnapshot fleet = site.application().planning().fleet(null);
        secrets = secrets(fleet);
        names.put("SHELVED", "SHELF-OF-B");
        fill(fleet);
    }

    @AfterAll
    void stop() {
        site.close();
    }

    private void fill(FleetSnapshot fleet) throws Exception {
        List<Visit> visits = site.application()
                .plans()
                .findInForce(ELSEWHERE)
                .orElseThrow()
                .plan()
                .visits();
        Visit other = visits.stream()
                .filter(visit ->
                        visit.depot().equals(ELSEWHERE) && visit.family().equals("V8-140"))
                .filter(visit -> !visit.cylinders().isEmpty())
                .findFirst()
                .orElseThrow();
        Visit own = visits.stream()
                .filter(visit -> visit.depot().equals(DemoSite.HOME))
                .findFirst()
                .orElseThrow();
        names.put("OTHER", other.truck());
        names.put("OWN", own.truck());
        names.put("WEEK", other.week().toString());
        names.put(
                "VIN",
                fleet.trucks().stream()
                        .filter(truck -> truck.truck().equals(other.truck()))
                        .map(truck -> truck.vin().text())
                        .findFirst()
                        .orElseThrow());
        names.put(
                "SERIAL",
                fleet.injectors().stream()
                        .filter(row -> row.truck().equals(other.truck()) && row.removedOn() == null)
                        .map(row -> String.valueOf(row.serial()))
                        .findFirst()
                        .orElseThrow());
        SerialisedStock shelf = new SerialisedStock(site.application().store());
        shelf.receive(
                new GoodsIn(
                        ELSEWHERE, "KV-8140", Origin.NEW, List.of(new GoodsIn.Unit("SHELF-OF-B", "SHELFCDEFSHELFCD"))),
                DemoSite.NOW,
                "test");
        names.put("INJECTOR", String.valueOf(shelf.list(ELSEWHERE).get(0).id()));
        all.post("/store", "/store/kits", Map.of("depot", ELSEWHERE, "truck", other.truck(), "do", "fill"));
        names.put(
                "ALERT",
                String.valueOf(new Alerts(site.application().store().dataSource())
                        .list(ELSEWHERE, EnumSet.of(AlertState.RAISED, AlertState.PLANNED))
                        .get(0)
                        .id()));
        all.post(
                "/store",
                "/bay/" + other.truck(),
                Map.of(
                        "formKey",
                        "first",
                        "doneOn",
                        "2026-03-02",
                        "labourHours",
                        "1",
                        "c1.fate",
                        "left",
                        "c1.reason",
                        "seized",
                        "do",
                        "close"));
        names.put(
                "CLOSED",
                String.valueOf(new CloseOuts(site.application().store())
                        .ofTruck(other.truck())
                        .get(0)
                        .id()));
    }

    /** What nobody of the home depot may read. */
    private static Pattern secrets(FleetSnapshot fleet) {
        Set<String> words = new LinkedHashSet<>(List.of("SHELF-OF-B", "SHELFCDEFSHELFCD"));
        fleet.depots().stream()
                .map(Depot::depot)
                .filter(depot -> !depot.equals(DemoSite.HOME))
                .forEach(words::add);
        Set<String> trucks = new LinkedHashSet<>();
        for (Truck truck : fleet.trucks()) {
            if (!truck.depot().equals(DemoSite.HOME)) {
                trucks.add(truck.truck());
                words.add(truck.vin().text());
            }
        }
        words.addAll(trucks);
        fleet.injectors().stream().filter(row -> trucks.contains(row.truck())).forEach(row -> {
            if (row.serial() != null) {
                words.add(row.serial());
            }
            if (row.calibrationCode() != null) {
                words.add(row.calibrationCode());
            }
        });
        return Pattern.compile(
                "\\b(" + String.join("|", words.stream().map(Pattern::quote).toList()) + ")\\b");
    }

    private String named(String text) {
        String named = text;
        for (Map.Entry<String, String> name : names.entrySet()) {
            named = named.replace(name.getKey(), name.getValue());
        }
        return named;
    }

    @Test
    void what_is_read_is_of_the_own_depot_alone() throws Exception {
        List<String> found = new ArrayList<>();
        List<String> shown = new ArrayList<>();
        List<String> leaks = new ArrayList<>();
        List<String> lines = lines("depot-reads.txt");
        for (String line : lines) {
            String path = line.substring(0, line.indexOf(' '));
            found.add(path + " " + read(all, path, shown) + " " + read(mechanic, path, leaks) + " "
                    + read(manager, path, leaks));
        }
        assertThat(leaks).isEmpty();
        assertThat(found).containsExactlyElementsOf(lines);
        assertThat(shown)
                .as("who sees all depots is shown what the others must not see")
                .anyMatch(word -> word.startsWith("/week: T"))
                .anyMatch(word -> word.startsWith("/sheets/parts-needs.xlsx: T"))
                .anyMatch(word -> word.startsWith("/trucks/OTHER/record.csv: " + names.get("VIN")))
                .anyMatch(word -> word.equals("/store?depot=Brennick: SHELF-OF-B"));
    }

    private String read(Visitor visitor, String path, List<String> leaks) throws Exception {
        HttpResponse<byte[]> answer = visitor.file(named(path));
        leaks(text(path, answer), named(path)).forEach(word -> leaks.add(path + ": " + word));
        String to = answer.headers().firstValue("Location").orElse("");
        return switch (answer.statusCode()) {
            case 200 -> "ok";
            case 302 -> "to-" + to.substring(to.lastIndexOf('/') + 1);
            case 400, 403, 404 -> "no";
            default -> String.valueOf(answer.statusCode());
        };
    }

    /** Words that were not in the question itself. */
    private List<String> leaks(String text, String asked) {
        return secrets.matcher(text)
                .results()
                .map(hit -> hit.group())
                .filter(word -> !asked.contains(word))
                .distinct()
                .toList();
    }

    private static String text(String path, HttpResponse<byte[]> answer) throws Exception {
        if (!path.contains(".xlsx") || answer.statusCode() != 200) {
            return new String(answer.body(), StandardCharsets.UTF_8);
        }
        StringBuilder text = new StringBuilder();
        try (var book = WorkbookFactory.create(new ByteArrayInputStream(answer.body()))) {
            book.forEach(sheet ->
                    sheet.forEach(row -> row.forEach(cell -> text.append(cell).append('\n'))));
        }
        assertThat(text).as(path).contains("Plan of ");
        return text.toString();
    }

    @Test
    void what_names_another_depots_things_is_refused_and_changes_nothing() throws Exception {
        List<String> found = new ArrayList<>();
        List<String> leaks = new ArrayList<>();
        List<String> lines = lines("depot-writes.txt");
        List<String> before = everything();
        for (String line : lines) {
            String[] cells = line.split(" ");
            found.add(cells[0] + " " + write(mechanic, cells, leaks) + " " + write(manager, cells, leaks) + " "
                    + cells[3]);
        }
        assertThat(leaks).isEmpty();
        assertThat(found).containsExactlyElementsOf(lines);
        assertThat(everything()).isEqualTo(before);
    }

    private String write(Visitor visitor, String[] cells, List<String> leaks) throws Exception {
        String form = named(cells[3]);
        HttpResponse<String> answer = visitor.postBare(named(cells[0]), "_csrf=" + visitor.csrf("/store") + "&" + form);
        leaks(answer.body(), form + named(cells[0])).forEach(word -> leaks.add(cells[0] + ": " + word));
        return List.of(400, 403, 404, 422).contains(answer.statusCode()) ? "no" : String.valueOf(answer.statusCode());
    }

    /** All that people change, row by row. */
    private List<String> everything() {
        List<String> rows = new ArrayList<>();
        for (String table : List.of(
                "plan_hold",
                "announced_visit",
                "close_out",
                "shelf_injector",
                "stock",
                "alert",
                "injector",
                "reading",
                "audit_entry",
                "planned_visit",
                "job_run")) {
            rows.addAll(new StoreSql(site.application().store().dataSource())
                    .inTransaction(connection -> StoreSql.list(
                            connection,
                            "select * from " + table + (table.equals("job_run") ? " where by_hand" : ""),
                            row -> {
                                StringBuilder text = new StringBuilder(table);
                                for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                                    text.append(' ').append(row.getString(i));
                                }
                                return text.toString();
                            })));
        }
        return rows;
    }

    @Test
    void who_sees_one_depot_plans_it_alone() throws Exception {
        long others = site.application().plans().findInForceId(ELSEWHERE).orElseThrow();
        long own = site.application().plans().findInForceId(DemoSite.HOME).orElseThrow();
        assertThat(manager.post("/plan", "/plan/anew", Map.of("depot", DemoSite.HOME))
                        .statusCode())
                .isEqualTo(302);
        assertThat(site.application().plans().findInForceId(ELSEWHERE)).hasValue(others);
        assertThat(site.application().plans().findInForceId(DemoSite.HOME).orElseThrow())
                .isGreaterThan(own);
    }

    @Test
    void a_token_and_a_calendar_reach_their_depot_alone() throws Exception {
        ApiTokens tokens = new ApiTokens(site.application().store().dataSource());
        String secret = tokens.make("telematics", EnumSet.allOf(Scope.class), DemoSite.HOME, 7, "test")
                .secret();
        for (String path : List.of(
                "/api/v1/plan?depot=Brennick",
                "/api/v1/readings?truck=OTHER",
                "/api/v1/faults?truck=OTHER",
                "/api/v1/close-outs?truck=OTHER")) {
            HttpResponse<String> answer = api(secret, path, null);
            assertThat(answer.statusCode()).as(path).isEqualTo(404);
            assertThat(leaks(answer.body(), named(path))).as(path).isEmpty();
        }
        HttpResponse<String> own = api(secret, "/api/v1/plan?depot=Norrvik", null);
        assertThat(own.statusCode()).isEqualTo(200);
        assertThat(leaks(own.body(), "")).isEmpty();
        HttpResponse<String> sent = api(
                secret,
                "/api/v1/readings",
                "{\"rows\":[{\"truck\":\"OTHER\",\"taken_at\":\"2026-03-02T06:00:00Z\",\"odometer_km\":900000}]}");
        assertThat(sent.statusCode()).isEqualTo(422);
        assertThat(leaks(sent.body(), named("OTHER"))).isEmpty();
        String calendar = new CalendarFeeds(site.application().store().dataSource())
                .make(DemoSite.HOME, Instant.now())
                .token();
        HttpResponse<String> visits = Visitor.nobody(site.app().address()).get("/calendar/" + calendar + ".ics");
        assertThat(visits.statusCode()).isEqualTo(200);
        assertThat(leaks(visits.body(), "")).isEmpty();
    }

    private HttpResponse<String> api(String secret, String path, String body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(
                        site.app().address().resolve(named(path)))
                .header("Authorization", "Bearer " + secret)
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", "key-" + path.length());
        return Visitor.nobody(site.app().address())
                .send(body == null ? request : request.POST(BodyPublishers.ofString(named(body))));
    }

    /** Lines of a table, the head left out, one space between cells. */
    private static List<String> lines(String table) throws IOException {
        try (InputStream in = DepotScopeTest.class.getResourceAsStream("/security/" + table)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.replaceAll("\\s+", " "))
                    .toList();
        }
    }
}
