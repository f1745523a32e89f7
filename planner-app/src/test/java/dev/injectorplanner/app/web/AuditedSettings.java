package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.testkit.SentForm;
import dev.injectorplanner.app.testkit.Visitor;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.EnumSet;
import java.util.Map;

/** Changes to settings and by other programs, for {@link AuditedRoutesTest}. */
final class AuditedSettings {
    private final URI address;
    private final RunningApp app;
    private final AuditNotes notes;

    AuditedSettings(URI address, RunningApp app, AuditNotes notes) {
        this.address = address;
        this.app = app;
        this.notes = notes;
    }

    void all() throws Exception {
        settings();
        programs();
    }

    private void settings() throws Exception {
        Visitor manager = Visitor.as(Role.MANAGER, address);
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, address);
        String rows = "/settings/{table:families|access|rules|depots}";
        String figures = "/settings/figures";
        notes.take(
                figures, "manager", "set", () -> sent(manager, figures, figures, Map.of("v.rescheduling-cost", "120")));
        String site = "/settings/site";
        notes.take(
                site,
                "administrator",
                "set",
                () -> sent(administrator, site, site, Map.of("v.site-name", "Yard & Co")));
        String save = "/settings/rules/save";
        Map<String, String> rule = Map.of("v.family", "all", "v.rule", "safety", "v.limit", "2", "v.window_days", "30");
        notes.take(rows + "/save", "manager", "add a row", () -> sent(manager, "/settings/rules/row", save, rule));
        String row = "/settings/rules/row?key=all%2C+safety";
        notes.take(rows + "/save", "manager", "change a row", () -> sent(manager, row, save, Map.of("v.limit", "1")));
        String remove = "/settings/rules/remove";
        notes.take(rows + "/remove", "manager", "remove a row", () -> sent(manager, row, remove, Map.of()));
    }

    /** A page's form with what was typed into it. */
    private static HttpResponse<String> sent(Visitor who, String page, String path, Map<String, String> typed)
            throws Exception {
        Map<String, String> fields = SentForm.of(who.get(page).body(), path);
        fields.putAll(typed);
        return who.postBare(path, Visitor.form(fields));
    }

    private void programs() throws Exception {
        Visitor administrator = Visitor.as(Role.ADMINISTRATOR, address);
        String page = "/settings/tokens";
        notes.take(
                page + "/make",
                "administrator",
                "make a token",
                () -> administrator.post(
                        page,
                        page + "/make",
                        AuditNotes.form("name", "telematics", "scope", Scope.READINGS_WRITE.text(), "days", "7")));
        ApiTokens tokens = new ApiTokens(app.application().store().dataSource());
        var token = tokens.make("test", EnumSet.allOf(Scope.class), null, 7, "test");
        String who = token.token().who();
        String moment = "_at\":\"2026-02-28T06:00:00Z\",";
        String reading = "{\"rows\":[{\"truck\":\"T-2\",\"taken" + moment + "\"odometer_km\":88100}]}";
        notes.take("/api/v1/readings", who, "send readings", () -> program("readings", token.secret(), reading));
        String fault = "{\"rows\":[{\"truck\":\"T-2\",\"seen" + moment + "\"code\":\"SPN 651 FMI 5\",\"count\":1}]}";
        notes.take("/api/v1/faults", who, "send faults", () -> program("faults", token.secret(), fault));
        String log = "(1772258400.000000) can0 18FECA00#00FF8C020501FFFF\n";
        notes.take(
                "/api/v1/logs",
                who,
                "send a vehicle log",
                () -> program("logs?name=night.log&truck=T-2", token.secret(), log));
        String closeOut = "{\"truck\":\"T-2\",\"done_on\":\"2026-03-02\",\"labour_hours\":1,\"cylinders\":"
                + "[{\"cylinder\":3,\"fitted\":false,\"reason\":\"tested, healthy\"}]}";
        notes.take(
                "/api/v1/close-outs", who, "close out a visit", () -> program("close-outs", token.secret(), closeOut));
        notes.take(
                page + "/revoke",
                "administrator",
                "revoke a token",
                () -> administrator.post(
                        page,
                        page + "/revoke",
                        AuditNotes.form("id", String.valueOf(token.token().id()))));
        assertThat(notes.all()).doesNotContain(token.secret());
    }

    private HttpResponse<String> program(String what, String secret, String body) throws Exception {
        return Visitor.nobody(address)
                .send(HttpRequest.newBuilder(address.resolve("/api/v1/" + what))
                        .header("Authorization", "Bearer " + secret)
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", "once " + what)
                        .POST(BodyPublishers.ofString(body)));
    }
}
