package dev.injectorplanner.core.coolant;

/**
 * Ethylene glycol in water by share of mass, 0 to 0.60. Source: Melinder, A. (2010), Properties of Secondary Working
 * Fluids for Indirect Systems, International Institute of Refrigeration; coefficients as in an open property library.
 * T = sum c_j (x - x0)^j in K.
 */
final class Melinder {
    private static final double SHARE_BASE = 0.308462;
    private static final double ZERO_C_KELVIN = 273.15;

    private static final double[] FREEZING_K = {257.9, -80.8, -133.4, -72.93, 100.6, 11.4};

    private Melinder() {}

    static double freezingC(double massShare) {
        return power(FREEZING_K, massShare - SHARE_BASE) - ZERO_C_KELVIN;
    }

    private static double power(double[] coefficients, double x) {
        double sum = 0;
        for (int j = coefficients.length - 1; j >= 0; j--) {
            sum = sum * x + coefficients[j];
        }
        return sum;
    }
}
