package dev.injectorplanner.core.defect;

import java.util.function.DoubleUnaryOperator;

/**
 * What it costs (or, below zero, saves) to leave an injector alone until each moment: (failure - planned) x failed + (alone -
 * planned) x taken out for its signs - the long-run rate over the use still had. Source: marginal cost analysis as in Dekker
 * (1995) and Wildeman, Dekker and Smit (1997), European Journal of Operational Research 99:530-551.
 *
 * <p>Near the day its truck leaves the fleet a new injector costs less than the long-run rate, since nobody has to pay for
 * its end: the rate is then at most what a new one's failures cost. A truck that has left needs nothing.
 *
 * @param until cost of deferring to each moment asked for
 * @param later cost of its best moment at or beyond the last one asked for, the truck's leaving included
 */
public record CostOfDeferring(double[] until, double later) {
    private static final double STEP_WEEKS = 2;
    private static final double MOST_WEEKS = 52 * 25; // by then any truck has left
    private static final double GONE = 1e-3;
    private static final int RISING = 13;

    /**
     * Costs and rates that waiting is held against.
     *
     * @param planned replaced in a planned visit
     * @param alone replaced because of its signs, in a visit by itself
     * @param failure failed in service
     * @param rate long-run cost per unit of the clock of new units
     * @param newHazard hazard of a new unit by age in the unit of the clock
     * @param perWeek use a week, above 0
     * @param leavesInWeeks weeks until the truck leaves the fleet; infinite where that is not known
     */
    public record Terms(
            double planned,
            double alone,
            double failure,
            double rate,
            DoubleUnaryOperator newHazard,
            double perWeek,
            double leavesInWeeks) {

        /** What having a new unit instead would cost per unit of use, after a number of weeks. */
        double rateIn(double weeks) {
            double left = leavesInWeeks - weeks;
            return left == Double.POSITIVE_INFINITY
                    ? rate
                    : left <= 0 ? 0 : Math.min(rate, failure * newHazard.applyAsDouble(left * perWeek));
        }

        double cost(FailurePath path) {
            return (failure - planned) * path.failed() + (alone - planned) * path.takenOut();
        }
    }

    /**
     * Costs for moments in weeks from today.
     *
     * @param path the injector from today on; it is used up
     * @param moments weeks from today, ascending, the first 0 or more
     * @param horizon weeks to the end of the horizon, not before the last moment
     */
    public static CostOfDeferring of(FailurePath path, Terms terms, double[] moments, double horizon) {
        double[] until = new double[moments.length];
        Walk walk = new Walk(path, terms);
        for (int i = 0; i < moments.length; i++) {
            walk.to(Math.min(moments[i], terms.leavesInWeeks)); // what is gone fails no more
            until[i] = walk.cost();
        }
        walk.to(Math.min(horizon, terms.leavesInWeeks));
        return new CostOfDeferring(until, later(walk, terms));
    }

    private static double later(Walk walk, Terms terms) {
        double least = terms.leavesInWeeks <= walk.weeks ? Double.POSITIVE_INFINITY : walk.cost();
        double before = walk.cost();
        int rising = 0;
        while (walk.weeks < Math.min(MOST_WEEKS, terms.leavesInWeeks) && walk.path.alive() > GONE) {
            walk.to(Math.min(terms.leavesInWeeks, walk.weeks + STEP_WEEKS));
            double now = walk.cost();
            rising = now > before ? rising + 1 : 0;
            least = Math.min(least, now);
            before = now;
            if (rising >= RISING && terms.leavesInWeeks == Double.POSITIVE_INFINITY) {
                return least;
            }
        }
        boolean left = walk.weeks >= Math.min(MOST_WEEKS, terms.leavesInWeeks);
        return left ? Math.min(least, walk.cost() - terms.planned * walk.path.alive()) : least;
    }

    /** Follows the path and adds up what a new unit would have cost meanwhile. */
    private static final class Walk {
        private final FailurePath path;
        private final Terms terms;
        private double weeks;
        private double saved;

        Walk(FailurePath path, Terms terms) {
            this.path = path;
            this.terms = terms;
        }

        void to(double moment) {
            if (moment > weeks) {
                double had = path.aliveUse();
                path.goOn((moment - weeks) * terms.perWeek);
                saved += terms.rateIn(0.5 * (weeks + moment)) * (path.aliveUse() - had);
                weeks = moment;
            }
        }

        double cost() {
            return terms.cost(path) - saved;
        }
    }
}
