package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.TaskResult.Effect;
import dev.injectorplanner.app.store.StoreSql;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;

/**
 * What came into the long histories since it was last looked at. Rows are numbered as they come; a mark in the store says
 * how far they were seen, so that a look reads new rows only. A load under way beside another may end after higher numbers
 * were seen: what it brings is left to the nightly plan.
 */
public final class NewRecords {
    private static final List<String> HISTORIES = List.of("reading", "fault", "cylinder_test");

    private final StoreSql sql;

    public NewRecords(DataSource pool) {
        this.sql = new StoreSql(pool);
    }

    /**
     * @param depots depots with new records, and their zones
     * @param records how many
     * @param seen notes that they were seen
     */
    record Found(Map<String, ZoneId> depots, long records, Effect seen) {}

    private record News(String depot, ZoneId zone, long rows) {}

    Found since() {
        Map<String, ZoneId> depots = new TreeMap<>();
        Map<String, Long> marks = new LinkedHashMap<>();
        long records = 0;
        for (String history : HISTORIES) {
            long newest = sql.list("select coalesce(max(id), 0) from " + history, row -> row.getLong(1))
                    .get(0);
            marks.put(history, newest);
            List<Long> mark = sql.list(
                    "select mark from job_mark where job = ? and depot = '' and kind = ?",
                    row -> row.getLong(1),
                    JobKind.SWEEP.name(),
                    history);
            if (mark.isEmpty() || mark.get(0) >= newest) {
                continue;
            }
            for (News news : newer(history, mark.get(0), newest)) {
                depots.put(news.depot(), news.zone());
                records += news.rows();
            }
        }
        return new Found(depots, records, seen(marks));
    }

    private List<News> newer(String history, long mark, long newest) {
        return sql.list(
                "select d.depot, d.time_zone, count(*) from " + history + " h join truck t on t.truck = h.truck"
                        + " join depot d on d.depot = t.depot where h.id > ? and h.id <= ? group by d.depot, d.time_zone",
                row -> new News(row.getString(1), ZoneId.of(row.getString(2)), row.getLong(3)),
                mark,
                newest);
    }

    private static Effect seen(Map<String, Long> marks) {
        return connection -> {
            for (Map.Entry<String, Long> mark : marks.entrySet()) {
                StoreSql.update(
                        connection,
                        "delete from job_mark where job = ? and depot = '' and kind = ?",
                        JobKind.SWEEP.name(),
                        mark.getKey());
                StoreSql.update(
                        connection,
                        "insert into job_mark (job, depot, kind, mark) values (?, '', ?, ?)",
                        JobKind.SWEEP.name(),
                        mark.getKey(),
                        mark.getValue());
            }
        };
    }
}
