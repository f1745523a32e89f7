package dev.injectorplanner.app.desk;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.StoreSql;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;

/** What was decided on the desk, as stored. */
public final class Decisions {
    private static final String COLUMNS =
            "select form_key, kind, depot, subject, state_seen, words, did, done_at, done_by, undone_at from desk_decision";

    private final StoreSql sql;

    public Decisions(DataSource source) {
        this.sql = new StoreSql(source);
    }

    /** Notes a decision; one of the same key is there already and stays. */
    void add(Decision decision) {
        sql.inTransaction(connection -> {
            int there = StoreSql.list(
                            connection,
                            "select count(*) as n from desk_decision where form_key = ?",
                            row -> row.getInt("n"),
                            decision.key())
                    .get(0);
            if (there == 0) {
                StoreSql.update(
                        connection,
                        "insert into desk_decision (form_key, kind, depot, subject, state_seen, words, did, done_at,"
                                + " done_by) values (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                        decision.key(),
                        decision.kind().name(),
                        decision.depot(),
                        decision.subject(),
                        decision.seen(),
                        decision.words(),
                        String.join("\n", decision.did()),
                        decision.at(),
                        decision.by());
                AuditTrail.write(
                        connection,
                        decision.at(),
                        decision.by(),
                        "decide on the week",
                        decision.depot() + ", " + decision.subject(),
                        "",
                        decision.words());
            }
            return true;
        });
    }

    void undone(Decision decision, Instant at, String by) {
        sql.inTransaction(connection -> {
            StoreSql.update(
                    connection,
                    "update desk_decision set undone_at = ?, undone_by = ? where form_key = ? and undone_at is null",
                    at,
                    by,
                    decision.key());
            AuditTrail.write(
                    connection,
                    at,
                    by,
                    "undo a decision",
                    decision.depot() + ", " + decision.subject(),
                    decision.words(),
                    "undone");
            return true;
        });
    }

    public Optional<Decision> find(String key) {
        return sql.list(COLUMNS + " where form_key = ?", Decisions::read, key).stream()
                .findFirst();
    }

    /** Those of a depot that stand, made since a moment, the newest first. */
    public List<Decision> list(String depot, Instant since) {
        return sql.list(
                COLUMNS + " where depot = ? and done_at >= ? and undone_at is null order by done_at desc, form_key",
                Decisions::read,
                depot,
                since);
    }

    private static Decision read(ResultSet row) throws SQLException {
        String did = row.getString("did");
        return new Decision(
                row.getString("form_key"),
                Decision.Kind.valueOf(row.getString("kind")),
                row.getString("depot"),
                row.getString("subject"),
                row.getString("state_seen"),
                row.getString("words"),
                did.isEmpty() ? List.of() : List.of(did.split("\n")),
                StoreSql.moment(row, "done_at"),
                row.getString("done_by"),
                StoreSql.instant(row, "undone_at"));
    }
}
