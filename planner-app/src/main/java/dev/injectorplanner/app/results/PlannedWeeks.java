package dev.injectorplanner.app.results;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;

/** Visits of each week as the plan in force on its Monday had them. */
public final class PlannedWeeks {
    private final StoreSql sql;

    public PlannedWeeks(DataSource source) {
        this.sql = new StoreSql(source);
    }

    /** Visits and hours planned for a week. */
    record Week(int visits, double hours) {}

    private record Run(long id, LocalDate madeFor) {}

    /**
     * A depot's weeks; those before its first plan are missing.
     *
     * @param from first week
     * @param to last week
     */
    Map<IsoWeek, Week> of(String depot, IsoWeek from, IsoWeek to) {
        List<Run> runs = sql.list(
                "select id, made_for from plan_run where depot_key in (?, '*') order by made_for, id",
                row -> new Run(row.getLong("id"), row.getDate("made_for").toLocalDate()),
                depot);
        Map<IsoWeek, Week> weeks = new TreeMap<>();
        for (IsoWeek week = from; week.compareTo(to) <= 0; week = week.plus(1)) {
            LocalDate monday = week.monday();
            List<Run> before = new ArrayList<>(
                    runs.stream().filter(run -> !run.madeFor().isAfter(monday)).toList());
            if (!before.isEmpty()) {
                weeks.put(week, planned(before.get(before.size() - 1).id(), depot, week));
            }
        }
        return weeks;
    }

    private Week planned(long run, String depot, IsoWeek week) {
        return sql.list(
                        "select count(*) as n, coalesce(sum(labour_hours), 0) as hours from planned_visit"
                                + " where plan_run = ? and depot = ? and week = ?",
                        row -> new Week(row.getInt("n"), row.getDouble("hours")),
                        run,
                        depot,
                        week.toString())
                .get(0);
    }
}
