package dev.injectorplanner.core.visit;

import dev.injectorplanner.core.finding.DueFinding;

/** A finding that a truck's visit does not answer, and why. */
public record LeftOut(DueFinding finding, String reason) {}
