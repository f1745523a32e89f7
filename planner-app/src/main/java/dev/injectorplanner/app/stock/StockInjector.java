package dev.injectorplanner.app.stock;

import dev.injectorplanner.core.fleet.Origin;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An injector in stock at a depot.
 *
 * @param id its number
 * @param depot where it lies
 * @param part its part
 * @param serial its serial
 * @param code its calibration code, empty where its part has none
 * @param origin new or reman
 * @param receivedAt when it was received
 * @param receivedBy by whom
 * @param truck the truck it is allocated to, or null
 * @param cylinder the cylinder it is allocated to, or null
 */
public record StockInjector(
        long id,
        String depot,
        String part,
        String serial,
        String code,
        Origin origin,
        Instant receivedAt,
        String receivedBy,
        @Nullable String truck,
        @Nullable Integer cylinder) {
    /** The truck and cylinder it is allocated to, in words. */
    public Optional<String> place() {
        return truck == null ? Optional.empty() : Optional.of("truck " + truck + ", cylinder " + cylinder);
    }

    /** Whether it is allocated to a cylinder of a truck. */
    public boolean isFor(String other, int place) {
        return other.equals(truck) && cylinder != null && cylinder == place;
    }
}
