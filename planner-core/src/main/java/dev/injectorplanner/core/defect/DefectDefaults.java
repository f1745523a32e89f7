package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.check.Require;
import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * How defects behave where the fleet's records are too few to tell; beside few records it counts as some of them.
 *
 * @param meanDelayKm km from a defect's arising to its failure, on average
 * @param sensitivity share of defects there are that a test (balance and return flow together) finds, 0 to 1
 * @param silentShare share of failures that no fault announced, 0 to 1
 */
@RecordBuilder
@RecordBuilder.Options(addClassRetainedGenerated = true)
public record DefectDefaults(double meanDelayKm, double sensitivity, double silentShare)
        implements DefectDefaultsBuilder.With {
    /** Planner defaults, of no source: 20,000 km, 80 %, 50 %. */
    public static final DefectDefaults STANDARD = new DefectDefaults(20_000, 0.8, 0.5);

    /** Spells of circuit faults a week: the wiring far more often than the coil (common practice; the figures are planner defaults). */
    private static final double CIRCUIT_SOUND = 0.004;

    private static final double CIRCUIT_DEFECTIVE = 0.016;

    /** Share of failures taken as sudden until records tell: a planner default. */
    private static final double SUDDEN = 0.1;

    private static final double LEAST_SHOWN = 0.02;
    private static final double MOST_SHOWN = 0.6;

    /** Nothing is impossible: a chance of 0 would make nonsense of a record that shows it all the same. */
    private static final double LEAST_FOUND = 0.01;

    private static final double MOST_FOUND = 0.99;

    public DefectDefaults {
        Require.positive("mean_delay_km", meanDelayKm);
        Require.within("sensitivity", sensitivity, 0, 1);
        Require.within("silent_share", silentShare, 0, 1);
    }

    /**
     * A model with these figures. What a sound injector shows by chance is a planner default: faults in one week of a hundred,
     * a test value over its limit one time in ten.
     *
     * @param unitsPerKm units of the part's clock a km: 1 for distance
     * @param perWeek usual use a week, in the unit of the clock
     */
    DefectModel model(double unitsPerKm, double perWeek) {
        double delay = meanDelayKm * unitsPerKm;
        double fails = perWeek > 0 ? -Math.expm1(-perWeek / delay) : 0.1;
        double silent = Math.max(0.01, (silentShare - SUDDEN) / (1 - SUDDEN));
        double quiet = silent / (fails + silent * (1 - fails));
        double shown = Math.max(LEAST_SHOWN, Math.min(MOST_SHOWN, 1 - quiet));
        double over = 1 - Math.sqrt(1 - Math.max(LEAST_FOUND, Math.min(MOST_FOUND, sensitivity)));
        double[] passes = {0.5, 0.26, 0.16, 0.06, 0.02};
        double under = 1 - over;
        double[] fails5 = {0.25 * under, 0.3 * under, 0.45 * under, 0.55 * over, 0.45 * over};
        return new DefectModel(
                delay,
                SUDDEN,
                1 - SUDDEN,
                new StateSigns(new double[] {0.99, 0.008, 0.002}, CIRCUIT_SOUND, 0.003, passes, passes, 0.15),
                new StateSigns(
                        new double[] {1 - shown, 0.6 * shown, 0.4 * shown},
                        CIRCUIT_DEFECTIVE,
                        0.01,
                        fails5,
                        fails5,
                        0.8),
                0);
    }
}
