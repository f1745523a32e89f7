package dev.injectorplanner.core.allocation;

/** Where a piece of a kit comes from. */
public enum PieceSource {
    /** On the depot's own shelf today. */
    SHELF("stock"),
    /** On an open line of a purchase order, by its confirmed day. */
    ORDER("open order"),
    /** Sent by another depot that can spare it. */
    TRANSFER("transfer"),
    /** Sent faster by the supplier, at a price. */
    EXPRESS("express"),
    /** Ordered as usual, in time even at the longest lead time. */
    ORDINARY_ORDER("ordinary order");

    private final String words;

    PieceSource(String words) {
        this.words = words;
    }

    /** As a person reads it. */
    public String words() {
        return words;
    }
}
