package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.history.Clock;

/**
 * How defects of one injector part behave before they fail.
 *
 * @param part part number
 * @param meanDelayKm mean km from a defect to its failure, above 0
 * @param delaySource {@link DefectHistory#OWN}, {@link DefectHistory#FLEET} or {@link DefectHistory#DEFAULT}
 * @param sensitivity chance that a test finds a defect that is there, 0..1
 * @param sensitivitySource as above
 * @param silentShare share of failures that no fault of the cylinder announced, 0..1
 * @param silentSource as above
 * @param kmPerHour mean km a engine hour of trucks with this part, above 0
 */
public record DefectEstimate(
        String part,
        double meanDelayKm,
        String delaySource,
        double sensitivity,
        String sensitivitySource,
        double silentShare,
        String silentSource,
        double kmPerHour) {
    public DefectEstimate {
        Require.positive("mean delay", meanDelayKm);
        Require.within("sensitivity", sensitivity, 0, 1);
        Require.within("silent share", silentShare, 0, 1);
        Require.positive("km a hour", kmPerHour);
    }

    /** What is left, on average, to an injector found worn, in the unit of a clock: half the mean delay. */
    public double remaining(Clock clock) {
        return DefectHistory.FOUND_AT * meanDelay(clock);
    }

    /** Mean delay in the unit of a clock. */
    public double meanDelay(Clock clock) {
        return clock == Clock.DISTANCE ? meanDelayKm : meanDelayKm / kmPerHour;
    }
}
