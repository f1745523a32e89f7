package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.MeterRules;
import dev.injectorplanner.core.usage.MeterVerdict;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Checks the meters against the nearest readings before and after. */
final class MeterCheck {
    private final Connection connection;
    private final String truck;
    private final Instant at;
    private final boolean replaced;
    private final EntryProblems problems;

    MeterCheck(Connection connection, String truck, Instant at, boolean replaced, EntryProblems problems) {
        this.connection = connection;
        this.truck = truck;
        this.at = at;
        this.replaced = replaced;
        this.problems = problems;
    }

    private record Near(double value, Instant at, boolean replaced) {}

    /** Judges a reading by the one before it. */
    private interface Rule {
        MeterVerdict judge(double previous, double current, double days, boolean replaced);
    }

    /** Whether both meters can be kept. */
    void check(@Nullable Double odometerKm, @Nullable Double engineHours) throws SQLException {
        if (odometerKm != null && inRange("odometer", odometerKm, Reading.MOST_KM, "km")) {
            check("odometer", "odometer_km", odometerKm, "km", MeterRules::odometer);
        }
        if (engineHours != null && inRange("engineHours", engineHours, Reading.MOST_HOURS, "h")) {
            check("engineHours", "engine_hours", engineHours, "h", MeterRules::engineHours);
        }
    }

    private void check(String field, String column, double value, String unit, Rule rule) throws SQLException {
        Optional<Near> before = near(column, "taken_at < ?", "desc");
        if (before.isPresent()) {
            Near last = before.get();
            say(field, value, unit, last, rule.judge(last.value(), value, days(last.at(), at), replaced));
        }
        Optional<Near> after = near(column, "taken_at > ?", "asc");
        if (after.isPresent()) {
            Near next = after.get();
            MeterVerdict verdict = rule.judge(value, next.value(), days(at, next.at()), next.replaced());
            sayAfter(field, value, unit, next, verdict);
        }
    }

    private void sayAfter(String field, double value, String unit, Near next, MeterVerdict verdict) {
        if (!verdict.usable()) {
            String than = verdict == MeterVerdict.IMPLAUSIBLE ? "leaves more than a truck can do until " : "is above ";
            problems.add(
                    field,
                    words(field) + " \"" + said(value) + " " + unit + "\": " + than + said(next.value()) + " " + unit
                            + " read on " + next.at().toString().substring(0, 10),
                    "correct it, or the day and hour on which the work was finished");
        }
    }

    /** Says the unit with each figure, so that the sentence can be read in another. */
    private boolean inRange(String field, double value, double most, String unit) {
        boolean within = value >= 0 && value <= most;
        if (!within) {
            String range = "from 0 " + unit + " to " + Figures.given(most) + " " + unit;
            problems.add(
                    field,
                    words(field) + " \"" + Figures.given(value) + " " + unit + "\": must be " + range,
                    "enter a number " + range);
        }
        return within;
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toSeconds() / 86_400.0;
    }

    private static String words(String field) {
        return field.equals("odometer") ? "odometer" : "engine hours";
    }

    private void say(String field, double value, String unit, Near before, MeterVerdict verdict) {
        if (!verdict.usable()) {
            String than = verdict == MeterVerdict.IMPLAUSIBLE ? "is more than a truck can do since " : "is below ";
            problems.add(
                    field,
                    words(field) + " \"" + said(value) + " " + unit + "\": " + than + said(before.value()) + " " + unit
                            + " read on " + before.at().toString().substring(0, 10),
                    "read the meter again, or tick that it was replaced");
        }
    }

    /** To a tenth: a meter shows no more. */
    private static String said(double value) {
        return Require.plain(Math.rint(value * 10) / 10);
    }

    private Optional<Near> near(String column, String when, String order) throws SQLException {
        return StoreSql.list(
                        connection,
                        "select " + column + ", taken_at, meter_replaced from reading where truck = ? and " + when
                                + " and " + column + " is not null order by taken_at " + order
                                + " fetch first 1 rows only",
                        row -> new Near(
                                row.getDouble(1), StoreSql.moment(row, "taken_at"), row.getBoolean("meter_replaced")),
                        truck,
                        at)
                .stream()
                .findFirst();
    }
}
