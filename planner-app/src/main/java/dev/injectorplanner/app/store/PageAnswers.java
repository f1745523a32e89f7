package dev.injectorplanner.app.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import javax.sql.DataSource;

/**
 * Answers of the store that every page asks for: each is asked once and then shown to reading pages until this process commits
 * something. Where another process may have changed the store, they are shown for two seconds at most. Whoever writes asks
 * the store itself.
 *
 * @param <K> what is asked
 * @param <V> the answer, which nobody changes
 */
public final class PageAnswers<K, V> {
    private static final long SHOWN_NANOS = TimeUnit.SECONDS.toNanos(2);
    private static final int MOST = 1_000;

    private final DataSource source;
    private final Cache<K, Answer<V>> answers =
            Caffeine.newBuilder().maximumSize(MOST).build();

    private record Answer<V>(V value, long commits, long atNanos) {}

    public PageAnswers(DataSource source) {
        this.source = source;
    }

    /**
     * The answer to a question.
     *
     * @param ask asks the store
     */
    public V of(K key, Function<K, V> ask) {
        if (!(source instanceof StorePools pools) || !StoreLane.isReading()) {
            return ask.apply(key);
        }
        Answer<V> known = answers.getIfPresent(key);
        if (known != null && isValid(known, pools)) {
            return known.value();
        }
        long commits = pools.commits(); // before asking: what is committed meanwhile makes the answer old
        long now = System.nanoTime();
        V value = ask.apply(key);
        answers.put(key, new Answer<>(value, commits, now));
        return value;
    }

    private static boolean isValid(Answer<?> known, StorePools pools) {
        return known.commits() == pools.commits()
                && (!pools.isShared() || System.nanoTime() - known.atNanos() < SHOWN_NANOS);
    }
}
