package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.TaskResult.Effect;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.history.PartLife;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;

/** Life models of every refit, in the store. */
public final class RefittedLives {
    private final StoreSql sql;

    public RefittedLives(DataSource pool) {
        this.sql = new StoreSql(pool);
    }

    /**
     * What makes a life another.
     *
     * @param clock km or hours
     * @param shape Weibull shape, no unit
     * @param scale Weibull scale, in the clock's unit
     * @param source fitted, or with a prior
     */
    record Figures(String clock, double shape, double scale, String source) {
        static Figures of(PartLife life) {
            return new Figures(
                    life.clock().name(),
                    life.life().shape(),
                    life.life().scale(),
                    life.source().name());
        }
    }

    private record Kept(String key, Figures figures) {}

    static String key(String part, String origin) {
        return part + "/" + origin;
    }

    /** The lives of the newest refit, by part and origin. */
    Map<String, Figures> newest() {
        Map<String, Figures> newest = new HashMap<>();
        sql.list(
                        "select part, origin, clock, shape, scale, source from refitted_life where due_at ="
                                + " (select max(due_at) from refitted_life)",
                        row -> new Kept(
                                key(row.getString(1), row.getString(2)),
                                new Figures(row.getString(3), row.getDouble(4), row.getDouble(5), row.getString(6))))
                .forEach(kept -> newest.put(kept.key(), kept.figures()));
        return newest;
    }

    Effect keeping(RunKey run, List<PartLife> lives) {
        return connection -> {
            for (PartLife life : lives) {
                Figures figures = Figures.of(life);
                StoreSql.update(
                        connection,
                        "insert into refitted_life (run_key, due_at, part, origin, clock, shape, scale, source,"
                                + " failures, suspensions) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                        run.text(),
                        run.due(),
                        life.part(),
                        life.origin().name(),
                        figures.clock(),
                        figures.shape(),
                        figures.scale(),
                        figures.source(),
                        life.failures(),
                        life.suspensions());
            }
        };
    }
}
