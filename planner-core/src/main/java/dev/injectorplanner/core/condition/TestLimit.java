package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.fleet.CylinderTest;

/** Compares a test with the limit in force. */
@FunctionalInterface
public interface TestLimit {
    /** Whether a test of an engine of this family is over its limit; false where the two cannot be compared. */
    boolean over(String family, CylinderTest test);
}
