package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.closeout.CloseOut.Done;
import dev.injectorplanner.app.people.AuditTrail;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the workshop changes, for the audit trail, in the change's own transaction. */
final class Notes {
    private Notes() {}

    static void closedOut(Connection connection, Instant at, String by, @Nullable CloseOut before, CloseOut made)
            throws SQLException {
        String subject = "truck " + made.truck() + ", " + made.doneOn()
                + (made.week() == null ? "" : ", visit of " + made.week());
        AuditTrail.write(
                connection,
                at,
                by,
                before == null ? "close a visit out" : "correct a close-out",
                subject,
                before == null ? earlier(made) : words(before),
                words(made) + (made.why().isEmpty() ? "" : "; because: " + made.why()));
    }

    private static String earlier(CloseOut made) {
        return made.cylinders().stream()
                .filter(Done::fitted)
                .map(done -> "cylinder " + done.cylinder() + ": "
                        + (done.oldFittedOn() == null
                                ? "no record"
                                : serial(done.oldSerial()) + " in since " + done.oldFittedOn()))
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
        return serial == null ? "one without serial" : "serial " + serial;
    }

    static void received(Connection connection, Instant at, String by, GoodsIn box) throws SQLException {
        String units = box.units().stream()
                .map(unit -> "serial " + unit.serial() + (unit.code().isEmpty() ? "" : ", code " + unit.code()))
                .collect(Collectors.joining("; "));
        AuditTrail.write(connection, at, by, "take injectors in", box.depot() + ", part " + box.part(), "", units);
    }

    static void tookOff(Connection connection, Instant at, String by, ShelfInjector injector) throws SQLException {
        AuditTrail.write(
                connection,
                at,
                by,
                "take an injector off the shelf",
                "serial " + injector.serial(),
                "on the shelf of " + injector.depot(),
                "gone");
    }

    static void bound(Connection connection, Instant at, String by, String truck, List<String> bound)
            throws SQLException {
        AuditTrail.write(connection, at, by, "fill a kit", "truck " + truck, "", String.join("; ", bound));
    }

    static void released(Connection connection, Instant at, String by, ShelfInjector injector) throws SQLException {
        AuditTrail.write(
                connection,
                at,
                by,
                "take an injector out of a kit",
                "serial " + injector.serial(),
                injector.place().map(place -> "meant for " + place).orElse("free"),
                "free");
    }

    /** {@code cylinder 3: serial R1}. */
    static String bound(int cylinder, ShelfInjector injector) {
        return "cylinder " + cylinder + ": serial " + injector.serial();
    }
}
