package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.closeout.CloseOut.Done;
import dev.injectorplanner.app.people.AuditTrail;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the workshop changes, for the audit trail, in the change's own transaction. */
final class CloseOutNotes {
    private CloseOutNotes() {}

    static void closedOut(Connection connection, String by, @Nullable CloseOut before, CloseOut made)
            throws SQLException {
        String subject = "truck " + made.truck() + ", " + made.doneOn()
                + (made.week() == null ? "" : ", visit of " + made.week());
        AuditTrail.writeOfTruck(
                connection,
                made.truck(),
                by,
                before == null ? "close out a visit" : "correct a close-out",
                subject,
                before == null ? earlier(made) : words(before),
                words(made) + (made.why().isEmpty() ? "" : "; because: " + made.why()));
    }

    static void voided(Connection connection, String by, CloseOut made, String why) throws SQLException {
        AuditTrail.writeOfTruck(
                connection,
                made.truck(),
                by,
                "void a close-out",
                "truck " + made.truck() + ", " + made.doneOn()
                        + (made.week() == null ? "" : ", visit of " + made.week()),
                words(made),
                "void; because: " + why);
    }

    private static String earlier(CloseOut made) {
        return made.cylinders().stream()
                .filter(Done::fitted)
                .map(done -> "cylinder " + done.cylinder() + ": "
                        + (done.oldFittedOn() == null
                                ? "no record"
                                : serial(done.oldSerial()) + " fitted " + done.oldFittedOn()))
                .collect(Collectors.joining("; "));
    }

    static String words(CloseOut made) {
        StringJoiner words = new StringJoiner("; ");
        words.add("version " + made.version());
        for (Done done : made.cylinders()) {
            words.add("cylinder " + done.cylinder() + ": "
                    + (done.fitted()
                            ? "found " + String.valueOf(done.found()).toLowerCase(java.util.Locale.ROOT) + ", "
                                    + serial(done.serial()) + " fitted"
                                    + (done.code() == null ? "" : ", code " + done.code())
                                    + (done.failedFirst() == null
                                            ? ""
                                            : ", after serial " + done.failedFirst() + " failed at once")
                            : "not done, " + done.reason()));
        }
        words.add(made.labourHours() + " h");
        if (made.odometerKm() != null) {
            words.add(made.odometerKm() + " km");
        }
        if (made.engineHours() != null) {
            words.add(made.engineHours() + " engine hours");
        }
        made.tasks().forEach(words::add);
        made.used().forEach(used -> words.add(used.used() + " of " + used.part()));
        made.tests()
                .forEach(test ->
                        words.add("test of cylinder " + test.cylinder() + ": " + test.value() + " " + test.unit()));
        if (made.recheckOn() != null) {
            words.add("recheck on " + made.recheckOn());
        }
        if (!made.extras().isEmpty()) {
            words.add(made.extras());
        }
        return words.toString();
    }

    private static String serial(@Nullable String serial) {
        return serial == null ? "one without a serial" : "serial " + serial;
    }
}
