package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.match.MatchText;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** How the files of each source are read, as persons have confirmed it. */
public final class KeptMatches {
    private final StoreSql sql;

    public KeptMatches(Store store) {
        this.sql = new StoreSql(store.dataSource());
    }

    /**
     * A match that is kept.
     *
     * @param key of its source
     */
    public record Kept(String key, FileMatch match, Instant savedAt, String savedBy) {}

    /**
     * A match that this version cannot read; its files are matched again.
     *
     * @param key of its source
     * @param source name of the file that it was made from
     * @param reason why it cannot be read
     */
    public record Unreadable(String key, String source, String reason) {}

    private record Read(@Nullable Kept kept, @Nullable Unreadable unreadable) {}

    /** All that can be read, the newest first. */
    public List<Kept> list() {
        return read().stream().map(Read::kept).filter(Objects::nonNull).toList();
    }

    /** Those that cannot be read. */
    public List<Unreadable> unreadable() {
        return read().stream().map(Read::unreadable).filter(Objects::nonNull).toList();
    }

    private static Read kept(ResultSet row) throws SQLException {
        String source = row.getString(2);
        try {
            return new Read(
                    new Kept(
                            row.getString(1),
                            MatchText.parse(Path.of(source + MatchFile.END), row.getString(3)),
                            row.getObject(4, OffsetDateTime.class).toInstant(),
                            row.getString(5)),
                    null);
        } catch (FileRefusedException | InvalidValueException e) {
            return new Read(null, new Unreadable(row.getString(1), source, String.valueOf(e.getMessage())));
        }
    }

    private List<Read> read() {
        return sql.inTransaction(connection -> {
            List<Read> kept = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(
                            "select source_key, source, match_text, saved_at, saved_by from file_match order by saved_at desc, source");
                    ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    kept.add(kept(rows));
                }
            }
            return kept;
        });
    }

    /** Keeps a match in place of an earlier one of its source. */
    public void save(FileMatch match, Instant at, String who) {
        sql.retried(connection -> {
            int changed = write(
                    connection,
                    "update file_match set source = ?, of_table = ?, match_text = ?, saved_at = ?, saved_by = ? where source_key = ?",
                    match,
                    at,
                    who);
            return changed > 0
                    ? changed
                    : write(
                            connection,
                            "insert into file_match (source, of_table, match_text, saved_at, saved_by, source_key) values (?, ?, ?, ?, ?, ?)",
                            match,
                            at,
                            who);
        });
    }

    private static int write(Connection connection, String statement, FileMatch match, Instant at, String who)
            throws SQLException {
        try (PreparedStatement write = connection.prepareStatement(statement)) {
            write.setString(1, match.source());
            write.setString(2, match.table());
            write.setString(3, MatchFile.text(match, Map.of()));
            write.setObject(4, at.atOffset(ZoneOffset.UTC));
            write.setString(5, who);
            write.setString(6, match.key());
            return write.executeUpdate();
        }
    }

    /** Forgets a match: the next file of its source is asked about again. */
    public boolean forget(String key) {
        return sql.retried(connection -> {
            try (PreparedStatement delete =
                    connection.prepareStatement("delete from file_match where source_key = ?")) {
                delete.setString(1, key);
                return delete.executeUpdate() > 0;
            }
        });
    }
}
