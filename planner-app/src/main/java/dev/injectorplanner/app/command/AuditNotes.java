package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;

/** What commands change goes into the audit trail, under the name of who typed them. */
final class AuditNotes {
    private AuditNotes() {}

    static void change(Application application, String what, String subject, String before, String after) {
        application.audit().record(Person.here(), what, subject, before, after);
    }
}
