package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.AuditEntry;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.wiring.ProviderSettings;
import java.util.Optional;

/** The settings by which people sign in, noted at a start with others than the last. */
final class SignInNote {
    private static final String WHAT = "change sign-in settings";
    private static final String PASSWORD = "name and password only";

    private SignInNote() {}

    static void write(Application application, Optional<ProviderSettings> provider) {
        AuditTrail audit = application.audit();
        String before = audit.findNewest(WHAT).map(AuditEntry::after).orElse(PASSWORD);
        String after = provider.map(each -> "also through " + each).orElse(PASSWORD);
        if (!after.equals(before)) {
            AuditNotes.change(application, WHAT, "sign-in", before, after);
        }
    }
}
