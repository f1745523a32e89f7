package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.fleet.CylinderTest;

/** Compares a test with the limit in force. */
@FunctionalInterface
public interface TestLimit {
    /** A test's value, without its sign, over the limit in force for a family; NaN where the two cannot be compared. */
    double ratio(String family, CylinderTest test);

    /** Whether a test of an engine of this family is over its limit; false where the two cannot be compared. */
    default boolean over(String family, CylinderTest test) {
        return ratio(family, test) > 1;
    }
}
