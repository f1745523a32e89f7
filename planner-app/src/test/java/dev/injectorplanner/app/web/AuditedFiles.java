package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.Multipart;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** What a buyer changes by files: loads, matches, views. */
final class AuditedFiles {
    private final URI address;
    private final RunningApp app;
    private final AuditNotes notes;

    AuditedFiles(URI address, RunningApp app, AuditNotes notes) {
        this.address = address;
        this.app = app;
        this.notes = notes;
    }

    void all() throws Exception {
        files();
        views();
        matches();
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
