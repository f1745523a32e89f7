package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.testkit.Multipart;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.visit.Visit;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.HtmlUtils;

/**
 * Every route by which something is changed, taken from the application itself: a successful change leaves a note of who
 * did what to what. A new route without a case here fails the test, and one without a note as well.
 */
@PlannerRuns
class AuditedRoutesTest {
    /** Routes of any method that change nothing. */
    private static final Set<String> CHANGE_NOTHING =
            Set.of("/error", "/bay/{truck}/readings", "/imports/match", "/replay"); // a file that waits for its match

    private static final String WEEK = "2026-W10";
    private static final String SEALS = "Parts & Sons";

    private URI address;
    private RunningApp app;
    private AuditNotes notes;

    @Test
    void every_change_leaves_a_note(URI address, RunningApp app) throws Exception {
        this.address = address;
        this.app = app;
        this.notes = new AuditNotes(app.application().audit());
        fill();
        workshop();
        alerts();
        plan();
        orders();
        new AuditedShop(address, app, notes).all();
        new AuditedBay(address, app, notes).all();
        safety();
        answers();
        files();
        views();
        matches();
        people();
        new AuditedSettings(address, app, notes).all();
        assertThat(notes.routes()).containsExactlyElementsOf(changingRoutes(app));
        assertThat(notes.missing()).isEmpty();
        assertThat(notes.all()).doesNotContain("four test people share it");
    }

    private static Set<String> changingRoutes(RunningApp app) {
        Set<String> routes = new TreeSet<>();
        for (RequestMappingHandlerMapping mapping :
                app.context().getBeansOfType(RequestMappingHandlerMapping.class).values()) {
            for (RequestMappingInfo info : mapping.getHandlerMethods().keySet()) {
                Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
                boolean reads = !methods.isEmpty()
                        && Set.of(RequestMethod.GET, RequestMethod.HEAD).containsAll(methods);
                if (!reads) {
                    routes.addAll(info.getPatternValues());
                }
            }
        }
        routes.removeAll(CHANGE_NOTHING);
        return routes;
    }

    private void fill() {
        List<Visit> visits = List.of(visit("T-1", List.of(1, 2)), visit("T-2", List.of(3)));
        var planned = PlanByHand.of(
                OneOfEach.DAY, List.of(PlanByHand.item("T-1", 3, "3 faults", OneOfEach.DAY.plusDays(5))), visits);
        app.application().plans().keep("by hand", "North", Instant.now().minusSeconds(60), planned.plan());
        new Alerts(app.application().store().dataSource()).update(planned, Instant.now());
    }

    private static Visit visit(String truck, List<Integer> cylinders) {
        return new Visit(
                truck,
                "North",
                "Four",
                IsoWeek.of(OneOfEach.DAY),
                cylinders,
                List.of("coolant down"),
                List.of(),
                false,
                3.5,
                17.1,
                List.of(),
                "for the faults");
    }

    private void workshop() throws Exception {
        Visitor mechanic = Visitor.as(Role.MECHANIC, address);
        String kits = "/store/kits";
        notes.take(
                "/store/receiving",
                "mechanic",
                "receive injectors",
                () -> mechanic.post(
                        "/store",
                        "/store/receiving",
                        AuditNotes.form(
                                "depot",
                                "North",
                                "part",
                                "INJ-4R",
                                "origin",
                                "REMAN",
                                "u0.serial",
                                "R1",
                                "u0.code",
                                "AAAA",
                                "u1.serial",
                                "R2",
                                "u1.code",
                                "BBBB",
                                "u2.serial",
                                "R3",
                                "u2.code",
                                "CCCC")));
        notes.take(
                kits,
                "mechanic",
                "allocate a kit",
                () -> mechanic.post("/store", kits, AuditNotes.form("depot", "North", "truck", "T-1", "do", "fill")));
        String injector = String.valueOf(new SerialisedStock(app.application().store())
                .kitOf("T-1")
                .get(2)
                .id());
        notes.take(
                kits,
                "mechanic",
                "release an injector from a kit",
                () -> mechanic.post(
                        "/store", kits, AuditNotes.form("depot", "North", "injector", injector, "do", "release")));
        notes.take(
                kits,
                "mechanic",
                "allocate a kit",
                () -> mechanic.post(
                        "/store",
                        kits,
                        AuditNotes.form(
                                "depot",
                                "North",
                                "injector",
                                injector,
                                "truck",
                                "T-2",
                                "cylinder",
                                "3",
                                "do",
                                "bind")));
        notes.take(
                kits,
                "mechanic",
                "release an injector from a kit",
                () -> mechanic.post(
                        "/store", kits, AuditNotes.form("depot", "North", "injector", injector, "do", "release")));
        notes.take(
                kits,
                "mechanic",
                "remove an injector from stock",
                () -> mechanic.post(
                        "/store",
                        kits,
                        AuditNotes.form(
                                "depot", "North", "injector", injector, "do", "off", "why", "sent to the test bench")));
        notes.take(
                "/bay/{truck}",
                "mechanic",
                "close out a visit",
                () -> mechanic.post("/store", "/bay/T-1", closeOut("key-1", "FAILED")));
        long id = new CloseOuts(app.application().store()).ofTruck("T-1").get(0).id();
        Visitor manager = Visitor.as(Role.MANAGER, address);
        Map<String, String> corrected = closeOut("key-2", "WORN");
        corrected.put("why", "it was worn");
        notes.take(
                "/bay/{truck}/close-outs/{id}",
                "manager",
                "correct a close-out",
                () -> manager.post("/store", "/bay/T-1/close-outs/" + id, corrected));
        assertThat(notes.of("/bay/{truck}/close-outs/{id}"))
                .contains("version 1; cylinder 1: found failed, serial R1 fitted, code AAAA")
                .contains("version 2; cylinder 1: found worn", "because: it was worn");
        long newest =
                new CloseOuts(app.application().store()).ofTruck("T-1").get(0).id();
        notes.take(
                "/bay/{truck}/close-outs/{id}/void",
                "manager",
                "void a close-out",
                () -> manager.post(
                        "/store", "/bay/T-1/close-outs/" + newest + "/void", AuditNotes.form("why", "wrong truck")));
    }

    private static Map<String, String> closeOut(String key, String found) {
        return AuditNotes.form(
                "formKey",
                key,
                "week",
                WEEK,
                "doneOn",
                "2026-03-02",
                "labourHours",
                "3.5",
                "odometer",
                "124000",
                "c1.fate",
                "fitted",
                "c1.found",
                found,
                "c1.serial",
                "R1",
                "c1.code",
                "AAAA",
                "c1.programmed",
                "yes",
                "c1.compared",
                "yes",
                "c2.fate",
                "left",
                "c2.reason",
                "bolt seized",
                "do",
                "close");
    }

    private void alerts() throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        String id = String.valueOf(new Alerts(app.application().store().dataSource())
                .list("North", EnumSet.of(AlertState.RAISED))
                .get(0)
                .id());
        notes.take(
                "/alerts/seen",
                "manager",
                "acknowledge an alert",
                () -> manager.post("/alerts", "/alerts/seen", AuditNotes.form("id", id)));
        notes.take(
                "/alerts/mute",
                "manager",
                "snooze an alert",
                () -> manager.post(
                        "/alerts",
                        "/alerts/mute",
                        AuditNotes.form("id", id, "until", "2026-04-01", "why", "sensor is being changed")));
        notes.take(
                "/alerts/many",
                "manager",
                "wake an alert",
                () -> manager.post("/alerts", "/alerts/many", AuditNotes.form("id", id, "act", "wake")));
    }

    private void plan() throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        notes.take(
                "/plan/confirm",
                "manager",
                "confirm visits",
                () -> manager.post("/plan", "/plan/confirm", AuditNotes.form("depot", "North", "week", WEEK)));
        notes.take(
                "/plan/hold",
                "manager",
                "hold a truck",
                () -> manager.post(
                        "/plan", "/plan/hold", AuditNotes.form("truck", "T-2", "do", "never", "why", "harvest")));
        decide(manager);
        notes.take(
                "/plan/release",
                "manager",
                "release a truck",
                () -> manager.post("/plan", "/plan/release", AuditNotes.form("truck", "T-2")));
        assertThat(notes.of("/plan/release"))
                .isEqualTo("release a truck T-2: blocked in every week (harvest) -> not held");
        notes.take(
                "/plan/anew",
                "manager",
                "make a plan",
                () -> manager.post("/plan", "/plan/anew", AuditNotes.form("depot", "North")));
        notes.take(
                "/jobs/times",
                "manager",
                "set a job's times",
                () -> manager.post(
                        "/jobs",
                        "/jobs/times",
                        AuditNotes.form("kind", "sweep", "depot", "", "often", "1-5", "at", "02:30")));
        notes.take(
                "/jobs/run",
                "manager",
                "run a job by hand",
                () -> manager.post(
                        "/jobs",
                        "/jobs/run",
                        AuditNotes.form(
                                "kind",
                                "sweep",
                                "depot",
                                "",
                                "due",
                                Instant.now().minusSeconds(2).toString())));
    }

    /** The first question that can be left as it is. */
    private void decide(Visitor manager) throws Exception {
        Matcher question = Pattern.compile(
                        "name=\"subject\" value=\"([^\"]*)\">" + "<input type=\"hidden\" name=\"act\" value=\"LEAVE\"")
                .matcher(manager.get("/week").body());
        assertThat(question.find()).as("a question on the week's page").isTrue();
        String subject = HtmlUtils.htmlUnescape(question.group(1));
        notes.take(
                "/week/decide",
                "manager",
                "decide on the week",
                () -> manager.post(
                        "/week",
                        "/week/decide",
                        AuditNotes.form("key", "k1", "depot", "North", "subject", subject, "act", "LEAVE")));
        Matcher undo = Pattern.compile("action=\"/week/undo\".*?name=\"key\" value=\"([^\"]*)\"", Pattern.DOTALL)
                .matcher(manager.get("/week").body());
        assertThat(undo.find()).as("what was decided can be undone").isTrue();
        notes.take(
                "/week/undo",
                "manager",
                "undo a decision",
                () -> manager.post("/week", "/week/undo", AuditNotes.form("key", undo.group(1))));
    }

    private void safety() throws Exception {
        Fault leak = new Fault(
                "T-1", OneOfEach.DAY.atTime(4, 0).toInstant(ZoneOffset.UTC), new FaultCode("P0093"), null, 1, null);
        app.application()
                .store()
                .inJointTransaction((connection, writer) -> writer.merge(Fault.class, List.of(leak), true));
        Visitor manager = Visitor.as(Role.MANAGER, address);
        notes.take(
                "/safety/{truck}/repair",
                "manager",
                "record a repair",
                () -> manager.post(
                        "/safety/T-2",
                        "/safety/T-2/repair",
                        AuditNotes.form("what", "fuel filter replaced", "done_on", "2026-03-20", "by", "Kim")));
        assertThat(notes.of("/safety/{truck}/repair")).contains("T-2", "fuel filter replaced");
        notes.take(
                "/safety/{truck}/hold-off",
                "manager",
                "hold off a diagnosis",
                () -> manager.post(
                        "/safety/T-1",
                        "/safety/T-1/hold-off",
                        AuditNotes.form("reason", "it stands in the yard", "confirm", "yes")));
        notes.take(
                "/safety/{truck}/resume",
                "manager",
                "plan a diagnosis again",
                () -> manager.post("/safety/T-1", "/safety/T-1/resume", AuditNotes.form("reason", "")));
    }

    private void answers() throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        notes.take(
                "/life/answer",
                "manager",
                "answer about failures",
                () -> manager.post(
                        "/life", "/life/answer", AuditNotes.form("part", "INJ-4R", "answer", "NOT_RECORDED")));
        assertThat(notes.of("/life/answer")).contains("failures were not recorded before 2026-");
    }

    private void orders() throws Exception {
        app.application().store().inJointTransaction((connection, writer) -> {
            Depot north = writer.all(Depot.class).get(0);
            return writer.merge(
                    Depot.class,
                    List.of(new Depot(
                            "South",
                            "South yard",
                            north.timeZone(),
                            1,
                            8,
                            north.workDays(),
                            north.labourPerHour(),
                            north.overtimePerHour(),
                            0)),
                    true);
        });
        Visitor buyer = Visitor.as(Role.BUYER, address);
        notes.take(
                "/orders/place",
                "buyer",
                "place an order",
                () -> buyer.post(
                        "/orders",
                        "/orders/place",
                        AuditNotes.form(
                                "key",
                                "k1",
                                "supplier",
                                SEALS,
                                "line",
                                "0",
                                "part0",
                                "SEAL-1",
                                "depot0",
                                "North",
                                "due0",
                                "2026-03-09",
                                "quantity0",
                                "20")));
        assertThat(notes.of("/orders/place"))
                .isEqualTo("place an order PO-00001, " + SEALS + ":  -> SEAL-1 for North: 20, expected 2026-03-09");
        orderLine(buyer, "confirm an order line", "do", "confirm", "day", "2026-03-11", "quantity", "18", "price", "");
        orderLine(buyer, "receive against an order", "do", "receive", "pieces", "5");
        orderLine(buyer, "cancel an order line", "do", "cancel", "why", "enough in stock");
        notes.take(
                "/orders/transfer",
                "buyer",
                "send a transfer",
                () -> buyer.post(
                        "/orders",
                        "/orders/transfer",
                        AuditNotes.form(
                                "key",
                                "k3",
                                "from",
                                "North",
                                "to",
                                "South",
                                "arrives",
                                "2026-03-04",
                                "pieces",
                                "SEAL-1\t2")));
    }

    private void orderLine(Visitor buyer, String note, String... fields) throws Exception {
        Map<String, String> form = AuditNotes.form(fields);
        form.putAll(AuditNotes.form("key", "k2", "order", "PO-00001", "part", "SEAL-1", "depot", "North"));
        notes.take("/orders/line", "buyer", note, () -> buyer.post("/orders", "/orders/line", form));
    }

    private void files() throws Exception {
        Visitor buyer = Visitor.as(Role.BUYER, address);
        Multipart form = new Multipart()
                .field("_csrf", buyer.csrf("/imports"))
                .field("mode", "good_rows")
                .file(
                        "files",
                        "readings.csv",
                        "truck,taken_at,odometer_km\nT-2,2026-02-27T06:00:00Z,88000\n"
                                .getBytes(StandardCharsets.UTF_8));
        notes.take("/imports", "buyer", "load a file", () -> buyer.send(form.to(address.resolve("/imports"))));
        assertThat(notes.of("/imports"))
                .isEqualTo("load a file readings.csv:  -> readings: 1 added, 0 changed, 0 refused");
    }

    private void views() throws Exception {
        Visitor buyer = Visitor.as(Role.BUYER, address);
        String views = "/trucks/views";
        notes.take(
                views,
                "buyer",
                "save a view",
                () -> buyer.post("/trucks", views, AuditNotes.form("name", "with faults", "view", "faults=on")));
        notes.take(
                views + "/forget",
                "buyer",
                "forget a view",
                () -> buyer.post("/trucks", views + "/forget", AuditNotes.form("name", "with faults")));
    }

    private void matches() throws Exception {
        Visitor buyer = Visitor.as(Role.BUYER, address);
        Multipart form = new Multipart()
                .field("_csrf", buyer.csrf("/imports"))
                .file(
                        "file",
                        "odometers.csv",
                        "Unit,Date,Odometer km\nT-2,28.02.2026,88100\n".getBytes(StandardCharsets.UTF_8));
        var waiting = buyer.send(form.to(address.resolve("/imports/match")));
        String key = String.valueOf(waiting.headers()
                        .firstValue("Location")
                        .orElse(waiting.uri().toString()))
                .replaceFirst(".*/imports/match/", "");
        String page = "/imports/match/" + key;
        Map<String, String> apply = AuditNotes.form("do", "apply", "asked", "yes");
        notes.take("/imports/match/{key}", "buyer", "match a file", () -> buyer.post(page, page, apply));
        String source = app.application().intake().matches().list().get(0).key();
        notes.take(
                "/imports/match/forget",
                "buyer",
                "forget a match",
                () -> buyer.post("/imports", "/imports/match/forget", Map.of("source", source)));
        notes.take(
                "/imports/start",
                "buyer",
                "set up the store",
                () -> buyer.post(
                        "/imports/start", "/imports/start", Map.of("kit", "v8", "depots", "Example", "zone", "UTC")));
    }

    private void people() throws Exception {
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, address);
        String page = "/settings/people";
        notes.take(
                page + "/add",
                "administrator",
                "add a person",
                () -> administrator.post(page, page + "/add", AuditNotes.form("name", "new", "role", "buyer")));
        notes.take(
                page + "/change",
                "administrator",
                "change a person",
                () -> administrator.post(page, page + "/change", AuditNotes.form("name", "new", "role", "manager")));
        notes.take(
                page + "/password",
                "administrator",
                "set a password",
                () -> administrator.post(page, page + "/password", AuditNotes.form("name", "new")));
        notes.take(
                page + "/disable",
                "administrator",
                "disable a person",
                () -> administrator.post(page, page + "/disable", AuditNotes.form("name", "new", "disabled", "true")));
        Visitor buyer = Visitor.as(Role.BUYER, address);
        notes.take(
                "/password",
                "buyer",
                "set a password",
                () -> buyer.post(
                        "/password",
                        "/password",
                        AuditNotes.form(
                                "now",
                                Visitor.PASSWORD,
                                "next",
                                "another one of five words",
                                "again",
                                "another one of five words")));
        assertThat(notes.of("/password")).doesNotContain("another one");
    }
}
