package dev.injectorplanner.app.security;

import io.github.bucket4j.Bandwidth;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.BucketConfiguration;
import io.github.bucket4j.TimeMeter;
import io.github.bucket4j.distributed.ExpirationAfterWriteStrategy;
import io.github.bucket4j.distributed.jdbc.PrimaryKeyMapper;
import io.github.bucket4j.postgresql.Bucket4jPostgreSQL;
import io.github.bucket4j.postgresql.PostgreSQLSelectForUpdateBasedProxyManager;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import javax.sql.DataSource;

/** Where tries to sign in are counted: in this process, or for all nodes in the database that they share. */
interface TryBuckets {
    /** The bucket of a key, made with these limits where there is none. */
    Bucket find(String key, Bandwidth... limits);

    void forget(String key);

    /** In this process. The least recently used are forgotten: names that nobody has must not fill the memory. */
    static TryBuckets ofThisProcess(TimeMeter clock) {
        return new TryBuckets() {
            private static final int MOST_KEPT = 40_000;

            private final Map<String, Bucket> kept = new LinkedHashMap<>(16, 0.75f, true) {
                private static final long serialVersionUID = 1L;

                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
                    return size() > MOST_KEPT;
                }
            };

            @Override
            public synchronized Bucket find(String key, Bandwidth... limits) {
                return kept.computeIfAbsent(key, each -> {
                    var builder = Bucket.builder().withCustomTimePrecision(clock);
                    for (Bandwidth limit : limits) {
                        builder.addLimit(limit);
                    }
                    return builder.build();
                });
            }

            @Override
            public synchronized void forget(String key) {
                kept.remove(key);
            }
        };
    }

    /** In a PostgreSQL, for all its nodes. */
    static TryBuckets shared(DataSource pool) {
        return new TryBuckets() {
            private static final Duration KEPT = Duration.ofDays(2);
            private static final int CLEARED_EVERY = 200;
            private static final int CLEARED_AT_ONCE = 1_000;

            private final PostgreSQLSelectForUpdateBasedProxyManager<String> kept =
                    Bucket4jPostgreSQL.selectForUpdateBasedBuilder(pool)
                            .primaryKeyMapper(PrimaryKeyMapper.STRING)
                            .table("sign_in_tries")
                            .idColumn("id")
                            .stateColumn("state")
                            .expiresAtColumn("expires_at")
                            .expirationAfterWrite(
                                    ExpirationAfterWriteStrategy.basedOnTimeForRefillingBucketUpToMax(KEPT))
                            .build();
            private final AtomicLong found = new AtomicLong();

            @Override
            public Bucket find(String key, Bandwidth... limits) {
                if (found.incrementAndGet() % CLEARED_EVERY == 0) {
                    kept.removeExpired(CLEARED_AT_ONCE);
                }
                return kept.builder().build(hashed(key), () -> {
                    var builder = BucketConfiguration.builder();
                    for (Bandwidth limit : limits) {
                        builder.addLimit(limit);
                    }
                    return builder.build();
                });
            }

            @Override
            public void forget(String key) {
                kept.removeProxy(hashed(key));
            }
        };
    }

    /** Not the name itself: people type passwords there. */
    private static String hashed(String key) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
