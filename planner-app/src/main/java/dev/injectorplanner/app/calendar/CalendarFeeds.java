package dev.injectorplanner.app.calendar;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Secret addresses of calendars: who knows the token reads the visits of one depot, nothing else. The store keeps a hash
 * of it, so a token is shown once and a copy of the store opens no calendar. The hash is plain SHA-256: 32 drawn bytes
 * cannot be guessed, so it need not be slow.
 */
public final class CalendarFeeds {
    private static final int TOKEN_BYTES = 32;

    private final StoreSql sql;
    private final SecureRandom random = new SecureRandom();

    public CalendarFeeds(DataSource store) {
        this.sql = new StoreSql(store);
    }

    /**
     * An address without its secret.
     *
     * @param revokedAt when it was closed, or null while it is open
     */
    public record Feed(
            long id, String depot, Instant madeAt, @Nullable Instant revokedAt) {}

    /** A new address. {@code token} is nowhere else: whoever loses it makes another. */
    public record NewFeed(Feed feed, String token) {
        @Override
        public String toString() {
            return feed.toString();
        }
    }

    /** @throws InvalidValueException where there is no such depot */
    public NewFeed make(String depot, Instant at) {
        byte[] drawn = new byte[TOKEN_BYTES];
        random.nextBytes(drawn);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(drawn);
        return sql.inTransaction(connection -> {
            List<String> depots =
                    StoreSql.list(connection, "select depot from depot order by depot", row -> row.getString("depot"));
            if (!depots.contains(depot)) {
                throw new InvalidValueException(
                        "depot",
                        depot,
                        "is not known",
                        depots.isEmpty() ? "load the depots first" : "choose one of " + String.join(", ", depots));
            }
            long id = StoreSql.nextIds(connection, "calendar_feed_seq");
            StoreSql.update(
                    connection,
                    "insert into calendar_feed (id, depot, token_hash, made_at) values (?, ?, ?, ?)",
                    id,
                    depot,
                    hash(token),
                    at);
            return new NewFeed(new Feed(id, depot, at, null), token);
        });
    }

    /** The open address of a token; empty for any other, so that nothing tells a closed one from one that never was. */
    public Optional<Feed> find(String token) {
        return sql
                .inTransaction(connection -> StoreSql.list(
                        connection,
                        "select id, depot, made_at, revoked_at from calendar_feed"
                                + " where token_hash = ? and revoked_at is null",
                        CalendarFeeds::feed,
                        hash(token)))
                .stream()
                .findFirst();
    }

    /**
     * Closes an address for good.
     *
     * @throws InvalidValueException where there is no open one of that number
     */
    public void revoke(long id, Instant at) {
        int closed = sql.inTransaction(connection -> StoreSql.update(
                connection, "update calendar_feed set revoked_at = ? where id = ? and revoked_at is null", at, id));
        if (closed == 0) {
            throw new InvalidValueException(
                    "calendar", id, "is not an active address", "use a number from the list of calendars");
        }
    }

    /** Every address there was, oldest first. */
    public List<Feed> list() {
        return sql.inTransaction(connection -> StoreSql.list(
                connection,
                "select id, depot, made_at, revoked_at from calendar_feed order by id",
                CalendarFeeds::feed));
    }

    private static Feed feed(ResultSet row) throws SQLException {
        return new Feed(
                row.getLong("id"),
                row.getString("depot"),
                StoreSql.moment(row, "made_at"),
                StoreSql.instant(row, "revoked_at"));
    }

    private static String hash(String token) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
