package dev.injectorplanner.app.store;

import java.time.Instant;

/**
 * Why pieces on hand change: what every movement of stock bears.
 *
 * @param kind what happens
 * @param document order, truck or stocktake that it belongs to, or empty
 * @param why in words, or empty
 * @param at when
 * @param by who
 */
public record StockCause(Kind kind, String document, String why, Instant at, String by) {
    /** What moves stock. */
    public enum Kind {
        OPENING("on hand when movements began"),
        LOADED("loaded from a file"),
        RECEIVED("received"),
        USED("used in a visit"),
        GIVEN_BACK("given back by a correction"),
        SENT("sent to another depot"),
        TAKEN_BACK("transfer cancelled"),
        COUNTED("counted"),
        REMOVED("removed"),
        RETURNED("returned to the supplier");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As a person reads it. */
        public String words() {
            return words;
        }
    }

    /** Rows of a file or of another program. */
    static StockCause loaded() {
        return new StockCause(Kind.LOADED, "", "", Instant.now(), "load");
    }
}
