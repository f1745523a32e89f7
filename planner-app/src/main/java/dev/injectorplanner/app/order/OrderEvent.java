package dev.injectorplanner.app.order;

import java.time.Instant;

/** Something that happened to an order. */
public record OrderEvent(String what, String words, Instant at, String by) {}
