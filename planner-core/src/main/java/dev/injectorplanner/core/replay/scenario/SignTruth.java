package dev.injectorplanner.core.replay.scenario;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.truth.TestTruth;

/**
 * What defects truly show, and what healthy injectors show for nothing.
 *
 * @param kmBetweenFaults mean km between stored faults of a cylinder with a defect, above 0
 * @param kmBetweenFalseCodes mean km between false codes of a healthy cylinder, above 0
 * @param harnessFaultsPerYear spells of false codes of one cylinder a truck and year (harness, connector), 0 or more
 * @param balanceNoise standard deviation of the balance test, mm3/stroke
 * @param balanceShift what a defect adds to it when it is about to fail; 40 % of that when it begins
 * @param flowNoise standard deviation of the return-flow test, ml/min
 * @param flowShift what a defect adds to it, in the same way
 */
public record SignTruth(
        double kmBetweenFaults,
        double kmBetweenFalseCodes,
        double harnessFaultsPerYear,
        double balanceNoise,
        double balanceShift,
        double flowNoise,
        double flowShift) {
    /** Return flow of a healthy injector, ml/min. */
    public static final double HEALTHY_FLOW = 26;

    /** Share of a defect's shift that shows as soon as it begins. */
    public static final double SHOWN_AT_ONCE = 0.4;

    private static final double LEAST_FLOW = 2;

    public SignTruth {
        Require.positive("km_between_faults", kmBetweenFaults);
        Require.positive("km_between_false_codes", kmBetweenFalseCodes);
        Require.notNegative("harness_faults_per_year", harnessFaultsPerYear);
        Require.notNegative("balance_noise", balanceNoise);
        Require.notNegative("balance_shift", balanceShift);
        Require.notNegative("flow_noise", flowNoise);
        Require.notNegative("flow_shift", flowShift);
    }

    /** What tests show, as a truth of its own. */
    public TestTruth tests() {
        return new TestTruth(
                balanceNoise,
                SHOWN_AT_ONCE * balanceShift,
                (1 - SHOWN_AT_ONCE) * balanceShift,
                HEALTHY_FLOW,
                flowNoise,
                SHOWN_AT_ONCE * flowShift,
                (1 - SHOWN_AT_ONCE) * flowShift,
                LEAST_FLOW);
    }
}
