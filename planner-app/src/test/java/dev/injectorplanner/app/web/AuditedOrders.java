package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.Multipart;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.fleet.Depot;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** What a buyer changes: orders, files, matches, views. */
final class AuditedOrders {
    private static final String SEALS = "Parts & Sons";

    private final URI address;
    private final RunningApp app;
    private final AuditNotes notes;

    AuditedOrders(URI address, RunningApp app, AuditNotes notes) {
        this.address = address;
        this.app = app;
        this.notes = notes;
    }

    void all() throws Exception {
        orders();
        files();
        views();
        matches();
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
}
