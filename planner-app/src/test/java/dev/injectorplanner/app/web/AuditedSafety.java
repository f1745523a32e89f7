package dev.injectorplanner.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import java.net.URI;
import java.time.ZoneOffset;
import java.util.List;

/** What a manager changes for safety, and answers about failures. */
final class AuditedSafety {
    private final URI address;
    private final RunningApp app;
    private final AuditNotes notes;

    AuditedSafety(URI address, RunningApp app, AuditNotes notes) {
        this.address = address;
        this.app = app;
        this.notes = notes;
    }

    void all() throws Exception {
        safety();
        answers();
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
