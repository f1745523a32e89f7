package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.AuditEntry;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.testkit.WorkshopForms;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Sends changes and looks for the note that each should leave in the audit trail. */
final class AuditNotes {
    private final AuditTrail audit;
    private final Map<String, String> notes = new TreeMap<>();

    AuditNotes(AuditTrail audit) {
        this.audit = audit;
    }

    /** A change, sent. */
    interface Sending {
        HttpResponse<String> send() throws Exception;
    }

    /** Sends a change by a route, which has to go well, and takes the note of who did what. */
    void take(String route, String who, String what, Sending sending) throws Exception {
        List<AuditEntry> before = audit.list(Long.MAX_VALUE, 1);
        long last = before.isEmpty() ? 0 : before.get(0).id();
        HttpResponse<String> answer = sending.send();
        assertThat(answer.statusCode()).as(route + "\n" + answer.body()).isBetween(200, 303);
        String found = "";
        for (AuditEntry entry : audit.list(Long.MAX_VALUE, 20)) {
            boolean told =
                    entry.id() > last && entry.who().equals(who) && entry.what().equals(what);
            if (told && !entry.subject().isBlank() && !(entry.before() + entry.after()).isBlank()) {
                found = entry.what() + " " + entry.subject() + ": " + entry.before() + " -> " + entry.after();
            }
        }
        notes.merge(route, found, (one, other) -> one.isEmpty() || other.isEmpty() ? "" : one + "\n" + other);
    }

    /** Routes by which something was sent. */
    Set<String> routes() {
        return notes.keySet();
    }

    /** Routes that left no note. */
    List<String> missing() {
        return routes().stream().filter(route -> of(route).isEmpty()).toList();
    }

    /** The notes of a route, a line each. */
    String of(String route) {
        return notes.getOrDefault(route, "");
    }

    String all() {
        return String.join("\n", notes.values());
    }

    /** Fields and their values, in turn. */
    static Map<String, String> form(String... pairs) {
        return WorkshopForms.of(pairs);
    }
}
