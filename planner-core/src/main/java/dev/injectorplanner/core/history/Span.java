package dev.injectorplanner.core.history;

/**
 * The stretch of a life that was observed, on one clock.
 *
 * @param entry age when observation began, 0 for from new
 * @param exit age when it ended, above {@code entry}
 */
public record Span(double entry, double exit) {
    public Span {
        if (!(entry >= 0 && exit > entry && Double.isFinite(exit))) {
            throw new IllegalArgumentException("a span must run forward from 0 or later: " + entry + " to " + exit);
        }
    }
}
