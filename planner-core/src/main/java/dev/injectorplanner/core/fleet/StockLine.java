package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;

/** What is in stock: {@code onHand} pieces (or litres) of a part at a depot, zero or more. */
public record StockLine(String depot, String part, double onHand) {
    public StockLine {
        depot = Require.name("depot", depot);
        part = Require.name("part", part);
        Require.within("on_hand", onHand, 0, 10_000_000);
    }
}
