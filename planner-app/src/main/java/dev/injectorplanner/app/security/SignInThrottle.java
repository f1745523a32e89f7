package dev.injectorplanner.app.security;

import io.github.bucket4j.Bandwidth;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Slows down who guesses passwords: per name and per address, with waits that grow with the tries: minutes, an hour, a day.
 * A right password clears its name. The figures are planner defaults.
 */
final class SignInThrottle {
    private static final int MOST_KEPT = 20_000;
    private static final Duration SHORT = Duration.ofMinutes(5);
    private static final Duration LONG = Duration.ofHours(1);
    private static final Duration DAY = Duration.ofDays(1);

    private final TimeMeter clock;
    private final Map<String, Bucket> names = kept();
    private final Map<String, Bucket> addresses = kept();

    SignInThrottle(TimeMeter clock) {
        this.clock = clock;
    }

    /** Takes one try of a name from an address; how long to wait before the next, zero where this one may go on. */
    synchronized Duration take(String name, String address) {
        Duration wait = take(addresses.computeIfAbsent(address, each -> bucket(30, 100, 500)));
        return wait.isZero() ? take(names.computeIfAbsent(name, each -> bucket(5, 12, 30))) : wait;
    }

    /** The try was right: it and those before it do not count against the name, nor this one against the address. */
    synchronized void right(String name, String address) {
        names.remove(name);
        Bucket bucket = addresses.get(address);
        if (bucket != null) {
            bucket.addTokens(1);
        }
    }

    private static Duration take(Bucket bucket) {
        ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
        return probe.isConsumed() ? Duration.ZERO : Duration.ofNanos(probe.getNanosToWaitForRefill());
    }

    private Bucket bucket(int inShort, int inLong, int inDay) {
        return Bucket.builder()
                .withCustomTimePrecision(clock)
                .addLimit(limit(inShort, SHORT))
                .addLimit(limit(inLong, LONG))
                .addLimit(limit(inDay, DAY))
                .build();
    }

    private static Bandwidth limit(int tries, Duration in) {
        return Bandwidth.builder().capacity(tries).refillIntervally(tries, in).build();
    }

    /** The least recently used are forgotten: names that nobody has must not fill the memory. */
    private static Map<String, Bucket> kept() {
        return new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
                return size() > MOST_KEPT;
            }
        };
    }

    /** A wait as a person says it: {@code 5 minutes}. */
    static String words(Duration wait) {
        long minutes = Math.max(1, wait.plusSeconds(59).toMinutes());

        if (minutes == 1) {
            return "a minute";
        }
        return minutes < 60 ? minutes + " minutes" : minutes == 60 ? "an hour" : (minutes + 59) / 60 + " hours";
    }
}
