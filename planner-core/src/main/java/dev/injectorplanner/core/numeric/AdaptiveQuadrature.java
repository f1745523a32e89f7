package dev.injectorplanner.core.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals by adaptive bisection of the 7-point Gauss and 15-point Kronrod pair. Nodes and weights: Piessens, de
 * Doncker-Kapenga, Ueberhuber and Kahaner (1983), QUADPACK, routine qk15, as is the
 * judgement of the error: the 15-point value is far better than its distance from the 7-point one.
 */
public final class AdaptiveQuadrature {
    private static final double[] NODE = {
        0.991455371120812639206854697526329, 0.949107912342758524526189684047851,
        0.864864423359769072789712788640926, 0.741531185599394439863864773280788,
        0.586087235467691130294144691693013, 0.405845151377397166906606412076961,
        0.207784955007898467600689403773245, 0.0
    };
    private static final double[] KRONROD = {
        0.022935322010529224963732008058970, 0.063092092629978553290700663189204,
        0.104790010322250183839876322541518, 0.140653259715525918745189590510238,
        0.169004726639267902826583426598550, 0.190350578064785409913256402421014,
        0.204432940075298892414161999234649, 0.209482141084727828012999174891714
    };
    private static final double[] GAUSS = {
        0.129484966168869693270611432679082, 0.279705391489276667901467771423780,
        0.381830050505118944950369775488975, 0.417959183673469387755102040816327
    };
    private static final int DEEPEST = 48;

    private AdaptiveQuadrature() {}

    /**
     * Integral of {@code f} over {@code from..to}.
     *
     * @param relativeError wanted error as a fraction of the integral of |f|, such as 1e-12
     * @return the integral, 0 where the bounds are equal; negative direction gives the negative integral
     * @throws IllegalArgumentException if a bound is NaN or infinite
     */
    public static double integrate(DoubleUnaryOperator f, double from, double to, double relativeError) {
        if (!Double.isFinite(from) || !Double.isFinite(to)) {
            throw new IllegalArgumentException("bounds of an integral must be finite: " + from + " to " + to);
        }
        if (from == to) {
            return 0;
        }
        Panel whole = Panel.over(f, from, to);
        double allowed = Math.max(relativeError, 1e-15) * Math.max(whole.absolute, Double.MIN_NORMAL);
        return refined(f, whole, allowed, DEEPEST);
    }

    private static double refined(DoubleUnaryOperator f, Panel panel, double allowed, int depth) {
        if (panel.error <= allowed || panel.error <= 1e-15 * panel.absolute || depth == 0) {
            return panel.value;
        }
        double middle = 0.5 * (panel.from + panel.to);
        Panel left = Panel.over(f, panel.from, middle);
        Panel right = Panel.over(f, middle, panel.to);
        double share = Math.max(0.5 * allowed, 1e-15 * (left.absolute + right.absolute));
        return refined(f, left, share, depth - 1) + refined(f, right, share, depth - 1);
    }

    private record Panel(double from, double to, double value, double absolute, double error) {
        static Panel over(DoubleUnaryOperator f, double from, double to) {
            double centre = 0.5 * (from + to);
            double half = 0.5 * (to - from);
            double middle = f.applyAsDouble(centre);
            double kronrod = KRONROD[7] * middle;
            double gauss = GAUSS[3] * middle;
            double absolute = KRONROD[7] * Math.abs(middle);
            for (int i = 0; i < 7; i++) {
                double low = f.applyAsDouble(centre - half * NODE[i]);
                double high = f.applyAsDouble(centre + half * NODE[i]);
                kronrod += KRONROD[i] * (low + high);
                absolute += KRONROD[i] * (Math.abs(low) + Math.abs(high));
                if (i % 2 == 1) {
                    gauss += GAUSS[i / 2] * (low + high);
                }
            }
            double size = absolute * Math.abs(half);
            double apart = Math.abs((kronrod - gauss) * half);
            double shrunk = size == 0 ? 0 : Math.min(1, Math.pow(200 * apart / size, 1.5)) * size;
            return new Panel(from, to, kronrod * half, size, Math.min(apart, shrunk));
        }
    }
}
