package dev.injectorplanner.app.people;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Tokens with which other programs use the API. A token is shown once; the store has its SHA-256, which is enough for 256
 * drawn bits. It can do what its scopes say, at its depot, until it expires or is revoked.
 */
public final class ApiTokens {
    /** Days that a token may last at most. */
    public static final int MOST_DAYS = 730;

    private static final int MOST_NAME = 60;
    private static final Duration USED_STEP = Duration.ofMinutes(1);
    private static final String COLUMNS =
            "select id, name, depot, made_by, made_at, expires_at, used_at, revoked_at from api_token";

    private final StoreSql sql;
    private final InstantSource clock;

    public ApiTokens(DataSource store) {
        this(store, InstantSource.system());
    }

    ApiTokens(DataSource store, InstantSource clock) {
        this.sql = new StoreSql(store);
        this.clock = clock;
    }

    /** A new token. {@code secret} is nowhere else: whoever loses it makes another. */
    public record NewToken(ApiToken token, String secret) {
        @Override
        public String toString() {
            return token.toString();
        }
    }

    /**
     * Makes a token.
     *
     * @param days how long it lasts, 1 to {@value #MOST_DAYS}
     * @throws InvalidValueException where the name, the scopes, the days or the depot are refused
     */
    public NewToken make(String name, Set<Scope> scopes, @Nullable String depot, int days, String by) {
        check(name, scopes, days);
        String secret = Secrets.token();
        Instant now = clock.instant();
        return sql.inTransaction(connection -> {
            PersonRows.requireDepot(connection, depot);
            long id = StoreSql.nextIds(connection, "api_token_seq");
            Instant ends = now.plus(Duration.ofDays(days));
            StoreSql.update(
                    connection,
                    "insert into api_token (id, name, token_hash, depot, made_by, made_at, expires_at)"
                            + " values (?, ?, ?, ?, ?, ?, ?)",
                    id,
                    name.strip(),
                    Secrets.hash(secret),
                    depot,
                    by,
                    now,
                    ends);
            for (Scope scope : scopes) {
                StoreSql.update(
                        connection, "insert into api_token_scope (token, scope) values (?, ?)", id, scope.text());
            }
            ApiToken token = new ApiToken(id, name.strip(), scopes, depot, by, now, ends, null, null);
            AuditTrail.write(connection, now, by, "make a token", token.who(), "", words(token));
            return new NewToken(token, secret);
        });
    }

    private static void check(String name, Set<Scope> scopes, int days) {
        if (name.isBlank() || name.strip().length() > MOST_NAME) {
            throw new InvalidValueException(
                    "name", name, "is empty or too long", "enter what the token is for, in at most 60 characters");
        }
        if (scopes.isEmpty()) {
            throw new InvalidValueException("scopes", "", "are missing", "choose what the token may do");
        }
        if (days < 1 || days > MOST_DAYS) {
            throw new InvalidValueException("days", days, "is out of range", "write 1 to " + MOST_DAYS);
        }
    }

    private static String words(ApiToken token) {
        return token.scopes().stream().sorted().map(Scope::text).collect(Collectors.joining(", ")) + ", "
                + (token.depot() == null ? "all depots" : token.depot()) + ", until " + token.expiresAt();
    }

    /** The open token of a secret; notes that it was used. */
    public Optional<ApiToken> findOpen(String secret) {
        Instant now = clock.instant();
        return sql.inTransaction(connection -> {
            Optional<ApiToken> token =
                    list(connection, COLUMNS + " where token_hash = ?", Secrets.hash(secret)).stream()
                            .filter(found -> found.isOpen(now))
                            .findFirst();
            if (token.isPresent() && isStale(token.get().usedAt(), now)) {
                StoreSql.update(
                        connection,
                        "update api_token set used_at = ? where id = ?",
                        now,
                        token.get().id());
            }
            return token;
        });
    }

    /** A write at every use would make each reading of the API a change of the store. */
    private static boolean isStale(@Nullable Instant usedAt, Instant now) {
        return usedAt == null || usedAt.plus(USED_STEP).isBefore(now);
    }

    /**
     * Closes a token for good.
     *
     * @throws InvalidValueException where there is no open one of that number
     */
    public void revoke(long id, String by) {
        Instant now = clock.instant();
        sql.inTransaction(connection -> {
            List<ApiToken> found = list(connection, COLUMNS + " where id = ? and revoked_at is null", id);
            if (found.isEmpty()) {
                throw new InvalidValueException(
                        "token", id, "is not an active token", "use a number from the list of tokens");
            }
            StoreSql.update(connection, "update api_token set revoked_at = ? where id = ?", now, id);
            AuditTrail.write(connection, now, by, "revoke a token", found.get(0).who(), words(found.get(0)), "revoked");
            return true;
        });
    }

    /** Every token there was, newest first. */
    public List<ApiToken> list() {
        return sql.inTransaction(connection -> list(connection, COLUMNS + " order by id desc"));
    }

    private static List<ApiToken> list(Connection connection, String query, @Nullable Object... values)
            throws SQLException {
        List<ApiToken> tokens = StoreSql.list(connection, query, row -> token(row, Set.of()), values);
        List<ApiToken> whole = new java.util.ArrayList<>();
        for (ApiToken token : tokens) {
            Set<Scope> scopes = EnumSet.noneOf(Scope.class);
            StoreSql.list(
                            connection,
                            "select scope from api_token_scope where token = ?",
                            row -> row.getString("scope"),
                            token.id())
                    .forEach(text -> scopes.add(Scope.of(text)));
            whole.add(new ApiToken(
                    token.id(),
                    token.name(),
                    scopes,
                    token.depot(),
                    token.madeBy(),
                    token.madeAt(),
                    token.expiresAt(),
                    token.usedAt(),
                    token.revokedAt()));
        }
        return whole;
    }

    private static ApiToken token(ResultSet row, Set<Scope> scopes) throws SQLException {
        return new ApiToken(
                row.getLong("id"),
                row.getString("name"),
                scopes,
                row.getString("depot"),
                row.getString("made_by"),
                StoreSql.moment(row, "made_at"),
                StoreSql.moment(row, "expires_at"),
                StoreSql.instant(row, "used_at"),
                StoreSql.instant(row, "revoked_at"));
    }
}
