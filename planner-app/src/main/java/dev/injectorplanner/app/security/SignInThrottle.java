package dev.injectorplanner.app.security;

import io.github.bucket4j.Bandwidth;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import java.time.Duration;

/**
 * Slows down who guesses passwords: per name and per address, with waits that grow with the tries: minutes, an hour, a day.
 * A right password clears its name. The figures are planner defaults.
 */
final class SignInThrottle {
    private static final Duration SHORT = Duration.ofMinutes(5);
    private static final Duration LONG = Duration.ofHours(1);
    private static final Duration DAY = Duration.ofDays(1);

    private static final String NAME = "name ";

    private final TryBuckets buckets;

    SignInThrottle(TryBuckets buckets) {
        this.buckets = buckets;
    }

    /** Takes one try of a name from an address; how long to wait before the next, zero where this one may go on. */
    Duration take(String name, String address) {
        Duration wait = take(ofAddress(address));
        return wait.isZero() ? take(ofName(name)) : wait;
    }

    /** The try was right: it and those before it do not count against the name, nor this one against the address. */
    void right(String name, String address) {
        buckets.forget(NAME + name);
        ofAddress(address).addTokens(1);
    }

    private static Duration take(Bucket bucket) {
        ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
        return probe.isConsumed() ? Duration.ZERO : Duration.ofNanos(probe.getNanosToWaitForRefill());
    }

    private Bucket ofAddress(String address) {
        return buckets.find("address " + address, limit(30, SHORT), limit(100, LONG), limit(500, DAY));
    }

    private Bucket ofName(String name) {
        return buckets.find(NAME + name, limit(5, SHORT), limit(12, LONG), limit(30, DAY));
    }

    private static Bandwidth limit(int tries, Duration in) {
        return Bandwidth.builder().capacity(tries).refillIntervally(tries, in).build();
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
