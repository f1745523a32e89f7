package dev.injectorplanner.core.change;

import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.Span;
import dev.injectorplanner.core.history.UnitLife;
import dev.injectorplanner.core.life.LifeModel;
import java.util.List;

/**
 * Failures to be expected by the life of earlier units, on the cautious side: within each stretch of age the greater of the
 * fitted life's and of the plain count, failures and half a failure more by use had. So early failures that the fit has not
 * taken up are not held against later units, and ages that no earlier unit was seen at say next to nothing.
 */
final class EarlierLife {
    private static final double[] STRETCHES = {0.02, 0.05, 0.1, 0.2, 0.35, 0.5, 0.7, 1, 1.4};
    private static final double HALF = 0.5;

    private final LifeModel fitted;
    private final double[] edges;
    private final double[] perUse;

    EarlierLife(LifeModel fitted, List<UnitLife> earlier, Clock clock) {
        this.fitted = fitted;
        double mean = fitted.meanLife();
        edges = new double[STRETCHES.length + 2];
        for (int i = 0; i < STRETCHES.length; i++) {
            edges[i + 1] = STRETCHES[i] * mean;
        }
        edges[edges.length - 1] = Double.POSITIVE_INFINITY;
        double[] use = new double[edges.length - 1];
        double[] failures = new double[use.length];
        for (UnitLife unit : earlier) {
            Span span = unit.on(clock);
            if (span != null) {
                count(unit, span, use, failures);
            }
        }
        perUse = new double[use.length];
        for (int i = 0; i < use.length; i++) {
            perUse[i] = (failures[i] + HALF) / Math.max(use[i], 1e-9);
        }
    }

    private void count(UnitLife unit, Span span, double[] use, double[] failures) {
        for (int i = 0; i < use.length; i++) {
            use[i] += Math.max(0, Math.min(edges[i + 1], span.exit()) - Math.max(edges[i], span.entry()));
            boolean ends = span.exit() > edges[i] && span.exit() <= edges[i + 1];
            failures[i] += ends && unit.failedOrWould() ? 1 : 0;
        }
    }

    /** Failures expected of a unit between two ages. */
    double expected(double from, double to) {
        double sum = 0;
        for (int i = 0; i < perUse.length && edges[i] < to; i++) {
            double begin = Math.max(from, edges[i]);
            double end = Math.min(to, edges[i + 1]);
            if (end > begin) {
                sum += Math.max(cumulative(fitted, end) - cumulative(fitted, begin), perUse[i] * (end - begin));
            }
        }
        return sum;
    }

    /** Cumulative hazard of a life at an age. */
    static double cumulative(LifeModel life, double age) {
        return -Math.log(Math.max(1e-300, life.survival(age)));
    }
}
