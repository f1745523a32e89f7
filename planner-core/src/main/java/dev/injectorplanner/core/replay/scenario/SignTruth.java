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
 * @param codes which codes are stored
 */
public record SignTruth(
        double kmBetweenFaults,
        double kmBetweenFalseCodes,
        double harnessFaultsPerYear,
        double balanceNoise,
        double balanceShift,
        double flowNoise,
        double flowShift,
        Codes codes) {
    /** Return flow of a healthy injector, ml/min. */
    public static final double HEALTHY_FLOW = 26;

    /** Share of a defect's shift that shows as soon as it begins. */
    public static final double SHOWN_AT_ONCE = 0.4;

    private static final double LEAST_FLOW = 2;

    /**
     * Shares of stored codes that name the injector's circuit (SPN 651 and on with FMI 5) and not its work (FMI 7).
     *
     * @param ofDefects of the codes of injectors with a defect, 0..1
     * @param ofOthers of stray codes and those of a chafed harness, 0..1
     */
    public record Codes(double ofDefects, double ofOthers) {
        /** Worn injectors mostly say that they do not respond, harnesses that a circuit is open: common practice, figures our own. */
        public static final Codes TOLD_APART = new Codes(0.25, 0.85);

        /** Whatever is wrong, four codes in five name the circuit. */
        public static final Codes ALIKE = new Codes(0.8, 0.8);

        public Codes {
            Require.within("circuit_codes_of_defects", ofDefects, 0, 1);
            Require.within("circuit_codes_of_others", ofOthers, 0, 1);
        }
    }

    public SignTruth {
        Require.positive("km_between_faults", kmBetweenFaults);
        Require.positive("km_between_false_codes", kmBetweenFalseCodes);
        Require.notNegative("harness_faults_per_year", harnessFaultsPerYear);
        Require.notNegative("balance_noise", balanceNoise);
        Require.notNegative("balance_shift", balanceShift);
        Require.notNegative("flow_noise", flowNoise);
        Require.notNegative("flow_shift", flowShift);
    }

    /** The same with other codes. */
    SignTruth withCodes(Codes other) {
        return new SignTruth(
                kmBetweenFaults,
                kmBetweenFalseCodes,
                harnessFaultsPerYear,
                balanceNoise,
                balanceShift,
                flowNoise,
                flowShift,
                other);
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
