package dev.injectorplanner.core.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals by adaptive bisection of the 7-point Gauss and 15-point Kronrod pair. Nodes and weights: Piessens, de
 * Doncker-Kapenga, Ueberhuber and Kahaner (1983), QUADPACK, routine qk15, as is the
 * judgement of the error: the 15-point value is far better than its distance from the 7-point one.
 */
public final class AdaptiveQuadrature {
    private static final double[] NODE = {
        0.9914553711208126, 0.9491079123427585,
        0.8648644233597691, 0.7415311855993945,
        0.5860872354676911, 0.4058451513773972,
        0.20778495500789848, 0.0
    };
    private static final double[] KRONROD = {
        0.022935322010529224, 0.06309209262997856,
        0.10479001032225019, 0.14065325971552592,
        0.1690047266392679, 0.19035057806478542,
        0.20443294007529889, 0.20948214108472782
    };
    private static final double[] GAUSS = {
        0.1294849661688697, 0.27970539148927664,
        0.3818300505051189, 0.4179591836734694
    };
    private static final int DEEPEST = 48;

    /** A smooth function takes one or a few, a corner or a narrow peak some fifty. */
    static final int MOST_PANELS = 20_000;

    private final DoubleUnaryOperator f;
    private int panels;

    private AdaptiveQuadrature(DoubleUnaryOperator f) {
        this.f = f;
    }

    /**
     * Integral of {@code f} over {@code from..to}.
     *
     * @param relativeError wanted error as a fraction of the integral of |f|, such as 1e-12
     * @return the integral, 0 where the bounds are equal; negative direction gives the negative integral
     * @throws IllegalArgumentException if a bound is NaN or infinite
     * @throws ArithmeticException if the error is still larger after {@value #MOST_PANELS} panels of 15 points
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
        return new AdaptiveQuadrature(f).refined(whole, allowed, DEEPEST);
    }

    private double refined(Panel panel, double allowed, int depth) {
        if (panel.error <= allowed || panel.error <= 1e-15 * panel.absolute || depth == 0) {
            return panel.value;
        }
        panels += 2;
        if (panels > MOST_PANELS) {
            throw new ArithmeticException("an integral stopped after " + MOST_PANELS + " panels, near " + panel.from
                    + ": the function is too rough for the error that was asked for");
        }
        double middle = 0.5 * (panel.from + panel.to);
        Panel left = Panel.over(f, panel.from, middle);
        Panel right = Panel.over(f, middle, panel.to);
        double share = Math.max(0.5 * allowed, 1e-15 * (left.absolute + right.absolute));
        return refined(left, share, depth - 1) + refined(right, share, depth - 1);
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
