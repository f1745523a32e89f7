package dev.injectorplanner.app.site;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
import dev.injectorplanner.core.replay.calibrate.PlanningFigure;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The planning figures as calibrations of this fleet chose them; the newest are planned with. */
public final class KeptCalibrations {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();
    private static final String NEWEST =
            " from calibration order by kept_at desc, run_key desc fetch first 1 rows only";
    private static final String FIGURES = "select access_share, renewal_margin, test_worth, sign_weight" + NEWEST;

    private final StoreSql sql;
    private final PageAnswers<String, Optional<PlanningFigures>> newest;

    public KeptCalibrations(DataSource store) {
        this.sql = new StoreSql(store);
        this.newest = new PageAnswers<>(store);
    }

    /**
     * A calibration.
     *
     * @param keptAt when it was kept
     * @param result what it found
     */
    public record Kept(Instant keptAt, CalibrationResult result) {}

    /** The figures of the newest calibration; empty where there was none yet. */
    public Optional<PlanningFigures> findFigures() {
        return newest.of(
                "", key -> sql.list(FIGURES, KeptCalibrations::figures).stream().findFirst());
    }

    private static PlanningFigures figures(ResultSet row) throws SQLException {
        return new PlanningFigures(row.getDouble(1), row.getDouble(2), row.getDouble(3), row.getDouble(4));
    }

    /** The newest calibration with all that was tried; empty where there was none yet. */
    public Optional<Kept> find() {
        return sql
                .list(
                        "select kept_at, document" + NEWEST,
                        row -> new Kept(
                                StoreSql.moment(row, "kept_at"),
                                MAPPER.readValue(row.getBytes(2), CalibrationResult.class)))
                .stream()
                .findFirst();
    }

    /**
     * Keeps a calibration that was not stopped, within the transaction that ends its run. A change of the figures is noted like
     * any change to what plans are made of.
     *
     * @param set figures that the site has set: of these the calibration before, or the planner's default, stays
     */
    public static void write(
            Connection connection,
            String runKey,
            Instant at,
            CalibrationResult result,
            Set<PlanningFigure> set,
            String by)
            throws SQLException {
        PlanningFigures before = StoreSql.list(connection, FIGURES, KeptCalibrations::figures).stream()
                .findFirst()
                .orElse(PlanningFigures.STANDARD);
        PlanningFigures chosen = result.chosen();
        for (PlanningFigure figure : set) {
            chosen = figure.with(chosen, figure.of(before));
        }
        StoreSql.update(
                connection,
                "insert into calibration (run_key, kept_at, access_share, renewal_margin, test_worth, sign_weight,"
                        + " document) values (?, ?, ?, ?, ?, ?, ?)",
                runKey,
                at,
                chosen.accessShare(),
                chosen.renewalMargin(),
                chosen.testWorth(),
                chosen.signWeight(),
                MAPPER.writeValueAsBytes(result));
        if (!chosen.equals(before)) {
            SiteSettings.takeTurn(connection);
            SiteSettings.noteChange(connection);
            AuditTrail.write(connection, at, by, "calibrate", "Planning figures", before.words(), chosen.words());
        }
    }

    /** Keeps a calibration made by hand. */
    public void keep(String runKey, Instant at, CalibrationResult result, Set<PlanningFigure> set, String by) {
        sql.inTransaction(connection -> {
            write(connection, runKey, at, result, set, by);
            return true;
        });
    }
}
