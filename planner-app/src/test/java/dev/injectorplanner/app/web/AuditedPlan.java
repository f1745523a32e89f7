package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import java.net.URI;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.web.util.HtmlUtils;

/** What a manager changes in the plan: alerts, holds, decisions, safety, answers about failures. */
final class AuditedPlan {
    private static final String WEEK = "2026-W10";

    private final URI address;
    private final RunningApp app;
    private final AuditNotes notes;

    AuditedPlan(URI address, RunningApp app, AuditNotes notes) {
        this.address = address;
        this.app = app;
        this.notes = notes;
    }

    void all() throws Exception {
        alerts();
        plan();
        safety();
        answers();
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
}
