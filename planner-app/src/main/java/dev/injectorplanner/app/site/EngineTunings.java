package dev.injectorplanner.app.site;

import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.plan.EngineFigures;
import dev.injectorplanner.core.replay.tune.TuningResult;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import javax.sql.DataSource;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The engine's figures as the tunings of this fleet chose them; the newest are planned with. */
public final class EngineTunings {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private final StoreSql sql;
    private final PageAnswers<String, Optional<EngineFigures>> newest;

    public EngineTunings(DataSource store) {
        this.sql = new StoreSql(store);
        this.newest = new PageAnswers<>(store);
    }

    /**
     * A tuning.
     *
     * @param keptAt when it was kept
     * @param result what it found
     */
    public record Kept(Instant keptAt, TuningResult result) {}

    /** The figures of the newest tuning; empty where there was none yet. */
    public Optional<EngineFigures> findFigures() {
        return newest.of(
                "",
                key -> sql
                        .list(
                                "select access_share, renewal_margin, test_worth, sign_weight from engine_tuning"
                                        + " order by kept_at desc, run_key desc fetch first 1 rows only",
                                row -> new EngineFigures(
                                        row.getDouble(1), row.getDouble(2), row.getDouble(3), row.getDouble(4)))
                        .stream()
                        .findFirst());
    }

    /** The newest tuning with all that was tried; empty where there was none yet. */
    public Optional<Kept> find() {
        return sql
                .list(
                        "select kept_at, document from engine_tuning order by kept_at desc, run_key desc fetch first 1 rows only",
                        row -> new Kept(
                                row.getTimestamp(1).toInstant(), MAPPER.readValue(row.getBytes(2), TuningResult.class)))
                .stream()
                .findFirst();
    }

    /** Keeps a tuning that was not stopped. Written with the end of its run, so that it is kept once. */
    public static void write(Connection connection, String runKey, Instant at, TuningResult result)
            throws SQLException {
        EngineFigures chosen = result.chosen();
        StoreSql.update(
                connection,
                "insert into engine_tuning (run_key, kept_at, access_share, renewal_margin, test_worth, sign_weight,"
                        + " document) values (?, ?, ?, ?, ?, ?, ?)",
                runKey,
                at,
                chosen.accessShare(),
                chosen.renewalMargin(),
                chosen.testWorth(),
                chosen.signWeight(),
                MAPPER.writeValueAsBytes(result));
    }

    /** Keeps a tuning made by hand. */
    public void keep(String runKey, Instant at, TuningResult result) {
        sql.inTransaction(connection -> {
            write(connection, runKey, at, result);
            return true;
        });
    }
}
