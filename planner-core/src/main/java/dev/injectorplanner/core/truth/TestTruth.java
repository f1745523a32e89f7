package dev.injectorplanner.core.truth;

import dev.injectorplanner.core.check.Require;

/**
 * What balance and return-flow tests truly show of an injector. A defect shifts both from the day it can be seen, and further
 * until it fails; healthy ones show noise.
 *
 * @param balanceNoise standard deviation of the balance test, mm3/stroke
 * @param balanceAtOnce what a defect that begins adds to it
 * @param balanceGrowth what it adds beyond that by its failure
 * @param healthyFlow mean return flow of a healthy injector, ml/min
 * @param flowNoise standard deviation of the return-flow test
 * @param flowAtOnce what a defect that begins adds to it
 * @param flowGrowth what it adds beyond that by its failure
 * @param leastFlow least that the test ever shows
 */
public record TestTruth(
        double balanceNoise,
        double balanceAtOnce,
        double balanceGrowth,
        double healthyFlow,
        double flowNoise,
        double flowAtOnce,
        double flowGrowth,
        double leastFlow) {
    public TestTruth {
        Require.notNegative("balance_noise", balanceNoise);
        Require.notNegative("balance_at_once", balanceAtOnce);
        Require.notNegative("balance_growth", balanceGrowth);
        Require.notNegative("healthy_flow", healthyFlow);
        Require.notNegative("flow_noise", flowNoise);
        Require.notNegative("flow_at_once", flowAtOnce);
        Require.notNegative("flow_growth", flowGrowth);
        Require.notNegative("least_flow", leastFlow);
    }

    /**
     * A balance test, tenths of mm3/stroke. Draws once from the normal distribution.
     *
     * @param side 1 or -1: which way this cylinder goes
     * @param defect whether it has one that can be seen
     * @param gone how far it has gone, 0 when it begins, 1 at the failure
     */
    public double balance(Draws draws, double side, boolean defect, double gone) {
        return tenths(draws.normal(0, balanceNoise) + (defect ? side * (balanceAtOnce + balanceGrowth * gone) : 0));
    }

    /** A return-flow test, tenths of ml/min. Draws once from the normal distribution. */
    public double flow(Draws draws, boolean defect, double gone) {
        double flow = draws.normal(healthyFlow, flowNoise) + (defect ? flowAtOnce + flowGrowth * gone : 0);
        return tenths(Math.max(leastFlow, flow));
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}
