package dev.injectorplanner.app.demo;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.generate.DemoFleet;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import javax.sql.DataSource;

/** The day the demo's fleet was made for. */
public final class DemoDay {
    /** When its plan was made: the night before the day's work, as the nightly job would have. */
    public static final Instant PLANNED_AT = at(LocalTime.of(1, 0));

    private static final Instant MORNING = at(LocalTime.of(7, 0));

    private static final List<String> NEWEST = List.of(
            "select kept_at as at_moment from plan_run order by kept_at desc fetch first 1 rows only",
            "select made_at as at_moment from close_out order by made_at desc fetch first 1 rows only",
            "select made_at as at_moment from plan_hold order by made_at desc fetch first 1 rows only");

    private DemoDay() {}

    private static Instant at(LocalTime time) {
        return DemoFleet.TODAY.atTime(time).toInstant(ZoneOffset.UTC);
    }

    /** A clock that shows the morning of that day now, and goes on from there. */
    public static InstantSource clock() {
        return from(MORNING);
    }

    /**
     * A clock for a demo that was used before: it shows that morning, or goes on from the newest plan, close-out or hold in the
     * store where that is later, so that what was done in an earlier session does not lie in the future.
     */
    public static InstantSource clock(DataSource store) {
        return new StoreSql(store).inTransaction(connection -> {
            Instant newest = MORNING;
            for (String sql : NEWEST) {
                List<Instant> found = StoreSql.list(connection, sql, row -> StoreSql.moment(row, "at_moment"));
                for (Instant each : found) {
                    newest = each.isAfter(newest) ? each : newest;
                }
            }
            return from(newest);
        });
    }

    private static InstantSource from(Instant start) {
        return Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), start));
    }
}
