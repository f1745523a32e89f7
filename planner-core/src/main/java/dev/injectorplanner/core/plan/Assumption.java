package dev.injectorplanner.core.plan;

/**
 * Something the plan takes as given.
 *
 * @param topic what it is about
 * @param text the assumption, with figures and units
 * @param source whose it is: "site", "planner default", "site and planner default" where a line has figures of
 *     both, "common practice", or a published source
 */
public record Assumption(String topic, String text, String source) {}
