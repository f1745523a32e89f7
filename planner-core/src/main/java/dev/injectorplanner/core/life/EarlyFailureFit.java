package dev.injectorplanner.core.life;

import java.util.Optional;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Finds early failures beside wear, where the records ask for them: penalised maximum likelihood of {@link EarlyFailures} and
 * Weibull wear together, both penalties and what is believed of the wear's shape being priors, taken where it is clearly
 * more likely than wear alone: "positive" evidence in the words of Kass and Raftery (1995), Journal of the American Statistical
 * Association 90:773-795. Source of the model: Chan and Meeker (1999).
 */
public final class EarlyFailureFit {
    private static final int FEWEST_FAILURES = 15;
    private static final double YOUNG = 0.2;
    private static final double WORTH_A_SEARCH = 0.5;
    private static final double CLEARLY = 1;
    private static final int MOST_EVALUATIONS = 600;
    private static final double FIRST_SHARE = 0.06;
    private static final double FIRST_MEAN = 0.05;
    private static final double SHARE_PENALTY = 8;
    private static final double MEAN_SPREAD = 1;

    private final LifeRecords records;
    private final WeibullPrior prior;
    private final double unit;

    private EarlyFailureFit(LifeRecords records, WeibullPrior prior, double unit) {
        this.records = records;
        this.prior = prior;
        this.unit = unit;
    }

    /**
     * What was found.
     *
     * @param early the early failures
     * @param wear the wear beside them
     * @param gain log-likelihood above that of wear alone, penalty taken off
     */
    public record Found(EarlyFailures early, WeibullLife wear, double gain) {
        /** Whether a failure at an age is more likely an early one than wear. */
        public boolean isEarly(double age) {
            return early.hazard(age) > wear.hazard(age);
        }
    }

    /**
     * Early failures; empty where the records do not ask for them, or are too few to.
     *
     * @param prior what is believed of the shape of the wear
     */
    public static Optional<Found> of(LifeRecords records, WeibullPrior prior) {
        if (records.believedEvents() < FEWEST_FAILURES) {
            return Optional.empty();
        }
        try {
            WeibullFit alone = WeibullFit.of(records);
            EarlyFailureFit fit = new EarlyFailureFit(records, prior, alone.scale());
            return fit.failsTooOftenYoung() ? fit.search(alone) : Optional.empty();
        } catch (NoEstimateException
                | MathIllegalStateException none) { // the second: no top within the evaluations allowed
            return Optional.empty();
        }
    }

    /** A quick look, so that not all records cost a search: young failures beside those that wear alone brings. */
    private boolean failsTooOftenYoung() {
        double young = YOUNG * unit;
        double usual = 0;
        double seen = 0;
        WeibullLife wear = new WeibullLife(2, unit);
        for (int row = 0; row < records.size(); row++) {
            double entry = records.entry(row);
            double exit = Math.min(young, records.exit(row));
            if (exit > entry) {
                usual += records.count(row) * wear.cumulativeHazard(entry, exit - entry);
                seen += records.exit(row) <= young ? records.eventShare(row) * records.count(row) : 0;
            }
        }
        return seen > WORTH_A_SEARCH * usual;
    }

    private Optional<Found> search(WeibullFit alone) {
        double[] start = {
            Math.log(FIRST_SHARE / (1 - FIRST_SHARE)), Math.log(FIRST_MEAN), Math.log(Math.max(1.5, alone.shape())), 0
        };
        MultivariateFunction value = this::penalised;
        PointValuePair best = new SimplexOptimizer(1e-7, 1e-9)
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        new ObjectiveFunction(value),
                        GoalType.MAXIMIZE,
                        new InitialGuess(start),
                        new NelderMeadSimplex(start.length, 0.3));
        double[] at = best.getPoint();
        double gain = best.getValue() - alone.logLikelihood() + believed(at[2]) - believed(Math.log(alone.shape()));
        return gain > CLEARLY
                ? Optional.of(new Found(early(at), wear(at), gain))
                : Optional.empty();
    }

    /** Log-density of a shape's logarithm by the prior, but for what is the same for all. */
    private double believed(double logShape) {
        double off = (logShape - Math.log(prior.shape())) / Math.log(prior.shapeFactor());
        return -0.5 * off * off;
    }

    private EarlyFailures early(double[] at) {
        return new EarlyFailures(0.5 / (1 + Math.exp(-at[0])), unit * Math.exp(at[1]));
    }

    private WeibullLife wear(double[] at) {
        return new WeibullLife(Math.exp(at[2]), unit * Math.exp(at[3]));
    }

    /** Shares are at most a half, and smaller ones are believed first; early means well before wear. */
    private double penalised(double[] at) {
        if (Math.abs(at[0]) > 30 || Math.abs(at[1]) > 8 || Math.abs(at[2]) > 4 || Math.abs(at[3]) > 4) {
            return Double.NEGATIVE_INFINITY;
        }
        EarlyFailures early = early(at);
        double apart = (at[1] - Math.log(FIRST_MEAN)) / MEAN_SPREAD;
        return logLikelihood(early, wear(at)) + SHARE_PENALTY * Math.log1p(-early.share()) - 0.5 * apart * apart;
    }

    private double logLikelihood(EarlyFailures early, WeibullLife wear) {
        double sum = 0;
        for (int row = 0; row < records.size(); row++) {
            double entry = records.entry(row);
            double lived = records.exit(row) - entry;
            double times = records.hazard(row);
            double own = -times * wear.cumulativeHazard(entry, lived) - early.cumulativeHazard(entry, lived);
            if (records.isEvent(row)) {
                own += records.eventShare(row)
                        * Math.log(times * wear.hazard(records.exit(row)) + early.hazard(records.exit(row)));
            }
            sum += records.count(row) * own;
        }
        return sum;
    }
}
