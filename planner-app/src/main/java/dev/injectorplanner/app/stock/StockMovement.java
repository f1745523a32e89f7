package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.store.StockCause;

/**
 * A change of the pieces on hand.
 *
 * @param id later ones have higher numbers within a depot and part
 * @param pieces in, or out where below 0
 * @param onHand pieces afterwards
 */
public record StockMovement(long id, String depot, String part, double pieces, double onHand, StockCause cause) {}
