package dev.injectorplanner.core.life;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays the grid where the posterior is: rows of equal log(shape) outward from the mode, in each row points of equal
 * log(scale) outward from that row's own mode, until the density is e^-18 of the greatest; shapes stay within 0.02 to
 * 200. Steps of 0.7 standard deviations: for so smooth a density the sum is then exact to many digits.
 */
final class PosteriorGrid {
    private static final double DROP = 18;
    private static final double STEP = 0.7;
    private static final int MOST_ROWS = 400;
    private static final double LEAST_U = Math.log(0.02);
    private static final double MOST_U = Math.log(200);

    private final WeibullLikelihood likelihood;
    private final double unit;
    private final double priorU;
    private final double priorUSd;
    private final double priorV;
    private final double priorVSd;
    private final List<double[]> nodes = new ArrayList<>();
    private final boolean empty;

    PosteriorGrid(LifeRecords records, WeibullPrior prior) {
        empty = records.size() == 0;
        LifeRecords held = empty ? LifeRecords.of(new double[] {prior.scale()}, new boolean[] {false}) : records;
        likelihood = new WeibullLikelihood(held);
        unit = likelihood.unit();
        priorU = Math.log(prior.shape());
        priorUSd = Math.log(prior.shapeFactor());
        priorV = Math.log(prior.scale() / unit);
        priorVSd = Math.log(prior.scaleFactor());
    }

    WeibullPosterior build() {
        double modeU = modeOfRows();
        double step = STEP * rowSd(modeU);
        double top = row(modeU).density;
        addRow(modeU, top);
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 1; i <= MOST_ROWS; i++) {
                double u = modeU + side * i * step;
                if (u < LEAST_U || u > MOST_U || addRow(u, top) < top - DROP) {
                    break;
                }
            }
        }
        return posterior();
    }

    private WeibullPosterior posterior() {
        double total = 0;
        for (double[] node : nodes) {
            total += node[2];
        }
        double[] shapes = new double[nodes.size()];
        double[] scales = new double[nodes.size()];
        double[] weights = new double[nodes.size()];
        for (int i = 0; i < shapes.length; i++) {
            double[] node = nodes.get(i);
            shapes[i] = Math.exp(node[0]);
            scales[i] = unit * Math.exp(node[1]);
            weights[i] = node[2] / total;
        }
        return new WeibullPosterior(shapes, scales, weights);
    }

    /** The best v of a row, the log density there, and its standard deviation in v. */
    private record Row(double v, double density, double sd) {}

    private double logDensity(double u, double v) {
        double priorPart = -0.5 * square((u - priorU) / priorUSd) - 0.5 * square((v - priorV) / priorVSd);
        return empty ? priorPart : priorPart + likelihood.at(u, v).value();
    }

    private static double square(double x) {
        return x * x;
    }

    /** Newton on v: minus the density is convex in v, its slope rises like an exponential, so steps are held short. */
    private Row row(double u) {
        double v = empty ? priorV : likelihood.startV(Math.exp(u), priorV);
        double curve = -1 / square(priorVSd);
        for (int step = 0; step < 400; step++) {
            double slope = -(v - priorV) / square(priorVSd);
            curve = -1 / square(priorVSd);
            if (!empty) {
                WeibullLikelihood.Surface s = likelihood.at(u, v);
                slope += s.dv();
                curve += s.dvv();
            }
            double move = Math.max(-1, Math.min(1, -slope / curve));
            v += move;
            if (Math.abs(move) < 1e-9) {
                break;
            }
        }
        return new Row(v, logDensity(u, v), 1 / Math.sqrt(-curve));
    }

    /** The u of the greatest row, by golden section over shapes 0.02 to 200. */
    private double modeOfRows() {
        double low = LEAST_U;
        double high = MOST_U;
        double golden = 0.5 * (Math.sqrt(5) - 1);
        double x = high - golden * (high - low);
        double y = low + golden * (high - low);
        double fx = row(x).density;
        double fy = row(y).density;
        while (high - low > 1e-6) {
            if (fx > fy) {
                high = y;
                y = x;
                fy = fx;
                x = high - golden * (high - low);
                fx = row(x).density;
            } else {
                low = x;
                x = y;
                fx = fy;
                y = low + golden * (high - low);
                fy = row(y).density;
            }
        }
        return 0.5 * (low + high);
    }

    /** Standard deviation in u at the mode from second differences; at most that of the prior. */
    private double rowSd(double modeU) {
        double h = 0.05 * priorUSd;
        double middle = row(modeU).density;
        for (int i = 0; i < 30; i++) {
            double fall = 2 * middle - row(modeU - h).density - row(modeU + h).density;
            if (fall < 0.5 || i == 29) {
                return fall > 0 ? Math.min(priorUSd, h / Math.sqrt(fall)) : priorUSd;
            }
            h *= 0.4;
        }
        return priorUSd;
    }

    /** Adds the points of a row and returns its greatest log density. */
    private double addRow(double u, double top) {
        Row row = row(u);
        double step = STEP * row.sd;
        add(u, row.v, row.density, step, top);
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 1; i <= MOST_ROWS; i++) {
                double v = row.v + side * i * step;
                double density = logDensity(u, v);
                if (!(density >= top - DROP)) {
                    break;
                }
                add(u, v, density, step, top);
            }
        }
        return row.density;
    }

    private void add(double u, double v, double density, double step, double top) {
        nodes.add(new double[] {u, v, Math.exp(density - top) * step});
    }
}
