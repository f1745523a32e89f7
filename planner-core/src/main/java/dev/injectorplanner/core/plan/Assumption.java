package dev.injectorplanner.core.plan;

/**
 * Something the plan takes as given.
 *
 * @param topic what it is about
 * @param text the assumption, with figures and units
 * @param source whose it is: "site", "planner default", "common practice", or a published source
 */
public record Assumption(String topic, String text, String source) {}
