package dev.injectorplanner.app.order;

import java.time.LocalDate;

/**
 * A line of an order to be placed.
 *
 * @param part part number
 * @param depot where it is to arrive
 * @param quantity pieces
 * @param dueOn the day it is expected
 */
public record NewLine(String part, String depot, double quantity, LocalDate dueOn) {}
