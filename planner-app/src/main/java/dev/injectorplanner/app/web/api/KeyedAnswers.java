package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.people.Secrets;
import dev.injectorplanner.app.store.StoreException;
import dev.injectorplanner.app.store.StoreSql;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Answers kept by idempotency key, for a week: the same key with the same body is answered the same and done once; with
 * another body it is refused. A request that was cut off by a crash may be sent again after a minute: rows that are in
 * already change nothing.
 */
public final class KeyedAnswers {
    private static final int MOST_KEY = 100;
    private static final Duration KEPT = Duration.ofDays(7);
    private static final Duration LOST = Duration.ofMinutes(1);
    private static final String CONFLICT = "The idempotency key is already used";

    private final StoreSql sql;
    private final InstantSource clock;

    public KeyedAnswers(DataSource store) {
        this(store, InstantSource.system());
    }

    KeyedAnswers(DataSource store, InstantSource clock) {
        this.sql = new StoreSql(store);
        this.clock = clock;
    }

    /**
     * An answer.
     *
     * @param status HTTP status
     * @param body JSON
     */
    public record Answer(int status, String body) {}

    private record Kept(String hash, int status, @Nullable String body, Instant madeAt) {}

    /**
     * Answers once.
     *
     * @param token the token's number: keys of different tokens do not meet
     * @param key the request's key, or null for none
     * @param request what was asked, address and body
     * @param work makes the answer; what it throws is not kept
     * @throws ApiRefusal where the key came with another request, or its request is still being answered
     */
    public Answer once(long token, @Nullable String key, String request, Supplier<Answer> work) {
        if (key == null) {
            return work.get();
        }
        if (key.isBlank() || key.length() > MOST_KEY) {
            throw ApiRefusal.badRequest(
                    "Idempotency-Key is empty or longer than " + MOST_KEY + " characters. Fix: send a UUID.");
        }
        Kept kept = claim(token, key, Secrets.hash(request));
        if (kept != null && kept.body() != null) {
            return new Answer(kept.status(), kept.body());
        }
        boolean done = false;
        try {
            Answer answer = work.get();
            keep(token, key, answer);
            done = true;
            return answer;
        } finally {
            if (!done) {
                forget(token, key);
            }
        }
    }

    /** What was answered already, or null where this request has the key now. */
    private @Nullable Kept claim(long token, String key, String hash) {
        Instant now = clock.instant();
        Kept kept = find(token, key);
        if (kept != null
                && kept.madeAt().plus(kept.body() == null ? LOST : KEPT).isBefore(now)) {
            forget(token, key);
            kept = null;
        }
        if (kept != null) {
            return checked(kept, hash);
        }
        try {
            sql.inTransaction(connection -> {
                StoreSql.update(connection, "delete from api_answer where made_at < ?", now.minus(KEPT));
                return StoreSql.update(
                        connection,
                        "insert into api_answer (token, request_key, request_hash, status, made_at) values (?, ?, ?, 0, ?)",
                        token,
                        key,
                        hash,
                        now);
            });
            return null;
        } catch (StoreException e) { // another request may have been faster by a moment
            Kept other = find(token, key);
            if (other == null) {
                throw e;
            }
            return checked(other, hash);
        }
    }

    private static Kept checked(Kept kept, String hash) {
        if (!kept.hash().equals(hash)) {
            throw new ApiRefusal(
                    409, CONFLICT, "This key was already used for a different request. Fix: use a new key.", List.of());
        }
        if (kept.body() == null) {
            throw new ApiRefusal(
                    409,
                    CONFLICT,
                    "The first request with this key is still being answered. Fix: ask again.",
                    List.of());
        }
        return kept;
    }

    private @Nullable Kept find(long token, String key) {
        return sql
                .inTransaction(connection -> StoreSql.list(
                        connection,
                        "select request_hash, status, answer, made_at from api_answer where token = ? and request_key = ?",
                        row -> new Kept(
                                row.getString("request_hash"),
                                row.getInt("status"),
                                row.getString("answer"),
                                StoreSql.moment(row, "made_at")),
                        token,
                        key))
                .stream()
                .findFirst()
                .orElse(null);
    }

    private void keep(long token, String key, Answer answer) {
        sql.inTransaction(connection -> StoreSql.update(
                connection,
                "update api_answer set status = ?, answer = ? where token = ? and request_key = ?",
                answer.status(),
                answer.body(),
                token,
                key));
    }

    private void forget(long token, String key) {
        sql.inTransaction(connection ->
                StoreSql.update(connection, "delete from api_answer where token = ? and request_key = ?", token, key));
    }
}
