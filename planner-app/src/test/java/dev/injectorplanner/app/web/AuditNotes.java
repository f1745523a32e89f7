package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.read.ListAppender;
import dev.injectorplanner.app.people.AuditEntry;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.testkit.WorkshopForms;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.slf4j.LoggerFactory;

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
        HttpResponse<String> answer;
        ListAppender<ILoggingEvent> log = new ListAppender<>(); // a page tells no more than a reference to its log
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        log.start();
        root.addAppender(log);
        try {
            answer = sending.send();
        } finally {
            root.detachAppender(log);
        }
        assertThat(answer.statusCode())
                .as(() -> route + "\n" + answer.body() + "\n" + told(log))
                .isBetween(200, 303);
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

    private static String told(ListAppender<ILoggingEvent> log) {
        return List.copyOf(log.list).stream()
                .filter(event -> event.getLevel().isGreaterOrEqual(Level.WARN))
                .map(event -> event.getFormattedMessage()
                        + (event.getThrowableProxy() == null
                                ? ""
                                : "\n" + ThrowableProxyUtil.asString(event.getThrowableProxy())))
                .collect(Collectors.joining("\n"));
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
