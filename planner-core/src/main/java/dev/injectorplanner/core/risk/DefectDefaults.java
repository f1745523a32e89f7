package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.check.Require;

/**
 * How defects behave where the fleet has too few records.
 *
 * @param meanDelayKm km from a defect's arising to its failure, on average
 * @param sensitivity share of defects there are that a test finds, 0 to 1
 * @param silentShare share of failures that no fault announced, 0 to 1
 */
public record DefectDefaults(double meanDelayKm, double sensitivity, double silentShare) {
    /** Planner defaults, of no source: 20,000 km, 80 %, 50 %. */
    public static final DefectDefaults STANDARD = new DefectDefaults(20_000, 0.8, 0.5);

    public DefectDefaults {
        Require.positive("mean_delay_km", meanDelayKm);
        Require.within("sensitivity", sensitivity, 0, 1);
        Require.within("silent_share", silentShare, 0, 1);
    }
}
