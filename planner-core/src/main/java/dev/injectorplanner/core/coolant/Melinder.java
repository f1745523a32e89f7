package dev.injectorplanner.core.coolant;

/**
 * Ethylene glycol in water by share of mass, 0 to 0.60. Source: Melinder, A. (2010), Properties of Secondary Working
 * Fluids for Indirect Systems, International Institute of Refrigeration; coefficients as in an open property library.
 * T = sum c_j (x - x0)^j in K; density = sum c_ij (T - T0)^i (x - x0)^j in kg/m3.
 */
final class Melinder {
    /** Pure ethylene glycol at 20 C. */
    static final double PURE_KG_PER_LITRE = 1.1132;

    /** Water at 20 C. */
    static final double WATER_KG_PER_LITRE = 0.9982;

    private static final double SHARE_BASE = 0.308462;
    private static final double KELVIN_BASE = 304.878;
    private static final double ZERO_C_KELVIN = 273.15;

    private static final double[] FREEZING_K = {257.9, -80.8, -133.4, -72.93, 100.6, 11.4};

    private static final double[][] DENSITY = {
        {1034.0, 131.1, 0.749, -106.2, -96.23, 489.1},
        {-0.4781, -0.6876, 0.7855, 1.229, -7.211},
        {-0.002692, 0.004805, -0.003995, -0.01153},
        {4.725e-06, 1.69e-06, 4.982e-05}
    };

    private Melinder() {}

    static double freezingC(double massShare) {
        return power(FREEZING_K, massShare - SHARE_BASE) - ZERO_C_KELVIN;
    }

    /** Density, kg a litre. */
    static double density(double massShare, double celsius) {
        double[] inTemperature = new double[DENSITY.length];
        for (int i = 0; i < DENSITY.length; i++) {
            inTemperature[i] = power(DENSITY[i], massShare - SHARE_BASE);
        }
        return power(inTemperature, celsius + ZERO_C_KELVIN - KELVIN_BASE) / 1_000;
    }

    static double densityAt20(double massShare) {
        return density(massShare, 20);
    }

    private static double power(double[] coefficients, double x) {
        double sum = 0;
        for (int j = coefficients.length - 1; j >= 0; j--) {
            sum = sum * x + coefficients[j];
        }
        return sum;
    }
}
