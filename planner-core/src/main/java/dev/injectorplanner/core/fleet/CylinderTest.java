package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import java.time.Instant;

/**
 * One cylinder's result of one test.
 *
 * @param truck the truck
 * @param cylinder number as the engine maker counts
 * @param testedAt the moment, UTC
 * @param test which test
 * @param value the result in {@code unit}
 * @param unit unit of the result, such as mm3/stroke, ml/min, %
 * @param engineState how the engine ran, such as "warm idle"
 */
public record CylinderTest(
        String truck, int cylinder, Instant testedAt, TestKind test, double value, String unit, String engineState) {
    public CylinderTest {
        truck = Require.name("truck", truck);
        Require.within("cylinder", cylinder, 1, EngineFamily.MOST_CYLINDERS);
        value = Require.within("value", value, -1_000_000, 1_000_000) + 0.0; // never minus zero
        unit = Require.name("unit", unit);
        engineState = Require.text("engine_state", engineState);
    }
}
