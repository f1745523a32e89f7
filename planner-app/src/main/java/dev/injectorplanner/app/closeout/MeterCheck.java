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

/** Checks the meters against their last readings, while the truck is still there to be looked at. */
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

    private record Last(double value, Instant at) {}

    /** Whether both meters can be kept. */
    void check(@Nullable Double odometerKm, @Nullable Double engineHours) throws SQLException {
        if (odometerKm != null && inRange("odometer", odometerKm, Reading.MOST_KM, "km")) {
            Optional<Last> last = last("odometer_km");
            if (last.isPresent()) {
                Last before = last.get();
                say(
                        "odometer",
                        odometerKm,
                        "km",
                        before,
                        MeterRules.odometer(before.value(), odometerKm, days(before), replaced));
            }
        }
        if (engineHours != null && inRange("engineHours", engineHours, Reading.MOST_HOURS, "h")) {
            Optional<Last> last = last("engine_hours");
            if (last.isPresent()) {
                Last before = last.get();
                say(
                        "engineHours",
                        engineHours,
                        "h",
                        before,
                        MeterRules.engineHours(before.value(), engineHours, days(before), replaced));
            }
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

    private double days(Last before) {
        return Duration.between(before.at(), at).toSeconds() / 86_400.0;
    }

    private static String words(String field) {
        return field.equals("odometer") ? "odometer" : "engine hours";
    }

    private void say(String field, double value, String unit, Last before, MeterVerdict verdict) {
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

    private Optional<Last> last(String column) throws SQLException {
        return StoreSql.list(
                        connection,
                        "select " + column + ", taken_at from reading where truck = ? and taken_at < ? and " + column
                                + " is not null order by taken_at desc fetch first 1 rows only",
                        row -> new Last(row.getDouble(1), StoreSql.moment(row, "taken_at")),
                        truck,
                        at)
                .stream()
                .findFirst();
    }
}
