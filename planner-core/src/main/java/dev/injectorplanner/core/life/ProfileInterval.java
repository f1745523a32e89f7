package dev.injectorplanner.core.life;

/**
 * Ends of a profile-likelihood interval: where the likelihood, made as large as it can be over the other parameter, has
 * fallen to the limit. Newton on both conditions at once (Venzon and Moolgavkar 1988, Applied Statistics 37:87-94);
 * where that strays, a plain outward walk with an inner maximisation.
 */
final class ProfileInterval {
    private static final double FARTHEST = 600;

    private final WeibullLikelihood likelihood;
    private final double topU;
    private final double topV;
    private final double limit;

    /** What the interval is for: the logarithm of the shape, or of the age where the cumulative hazard is exp(g). */
    enum Target {
        SHAPE,
        QUANTILE
    }

    ProfileInterval(WeibullLikelihood likelihood, double topU, double topV, double limit) {
        this.likelihood = likelihood;
        this.topU = topU;
        this.topV = topV;
        this.limit = limit;
    }

    /**
     * Both ends.
     *
     * @param g logarithm of the cumulative hazard at the quantile; 0 for the scale itself
     * @param reach a first guess of the distance from the maximum to each end
     * @return ends on the natural scale, quantiles in units of the largest exit
     */
    WeibullIntervals.Interval of(Target target, double g, double reach) {
        return new WeibullIntervals.Interval(Math.exp(end(target, g, -reach)), Math.exp(end(target, g, reach)));
    }

    private double end(Target target, double g, double reach) {
        double top = target == Target.SHAPE ? topU : topV + g * Math.exp(-topU);
        double nuisance = target == Target.SHAPE ? topV : topU;
        View start = view(target, g, top, nuisance);
        double psi = top + reach;
        double lambda = nuisance - start.cross / start.other2 * reach;
        for (int step = 0; step < 25; step++) {
            View here = view(target, g, psi, lambda);
            double determinant = here.slope * here.other2 - here.other * here.cross;
            double miss = here.value - limit;
            double movePsi = (-miss * here.other2 + here.other * here.other) / determinant;
            double moveLambda = (-here.slope * here.other + miss * here.cross) / determinant;
            double longest = Math.max(Math.abs(movePsi), Math.abs(moveLambda));
            if (!(longest < 20) || here.other2 >= 0 || (psi - top) * reach <= 0) {
                break;
            }
            psi += movePsi;
            lambda += moveLambda;
            if (longest < 1e-9) {
                return psi;
            }
        }
        return walk(target, g, top, nuisance, reach);
    }

    private double walk(Target target, double g, double top, double nuisance, double reach) {
        double[] warm = {nuisance};
        double inner = top;
        double step = 0.5 * reach;
        double outer = top + step;
        while (profile(target, g, outer, warm) > limit) {
            inner = outer;
            step *= 1.6;
            outer += step;
            if (Math.abs(outer - top) > FARTHEST) {
                return Math.signum(reach) * Double.POSITIVE_INFINITY;
            }
        }
        while (Math.abs(outer - inner) > 1e-11 * Math.max(1, Math.abs(outer))) {
            double middle = 0.5 * (inner + outer);
            if (profile(target, g, middle, warm) > limit) {
                inner = middle;
            } else {
                outer = middle;
            }
        }
        return inner;
    }

    /** The likelihood at psi, made greatest over the other parameter by Newton with halved steps. */
    private double profile(Target target, double g, double psi, double[] warm) {
        double lambda = start(target, g, psi, warm[0]);
        View here = view(target, g, psi, lambda);
        for (int step = 0; step < 100; step++) {
            double move = here.other2 < 0 ? -here.other / here.other2 : Math.signum(here.other);
            move = Math.max(-1, Math.min(1, move));
            View there = view(target, g, psi, lambda + move);
            for (int halved = 0; halved < 40 && !(there.value >= here.value); halved++) {
                move *= 0.5;
                there = view(target, g, psi, lambda + move);
            }
            if (there.value >= here.value) {
                lambda += move;
                here = there;
            }
            if (!(Math.abs(move) >= 1e-10)) {
                break;
            }
        }
        warm[0] = lambda;
        return here.value;
    }

    /** The best of a few places to start from: the last one, that of the maximum, and others around them. */
    private double start(Target target, double g, double psi, double last) {
        double top = target == Target.SHAPE ? topV : topU;
        double best = last;
        double most = Double.NEGATIVE_INFINITY;
        for (double share = -0.5; share <= 1.5; share += 0.25) {
            double lambda = top + share * (last - top);
            double value = view(target, g, psi, lambda).value;
            if (value > most) {
                most = value;
                best = lambda;
            }
        }
        return best;
    }

    /** The likelihood seen in the parameter of interest (slope) and the other one (other, other2, cross). */
    private record View(double value, double slope, double other, double other2, double cross) {}

    private View view(Target target, double g, double psi, double lambda) {
        if (target == Target.SHAPE) {
            WeibullLikelihood.Surface s = likelihood.at(psi, lambda);
            return new View(s.value(), s.du(), s.dv(), s.dvv(), s.duv());
        }
        double bend = g * Math.exp(-lambda);
        WeibullLikelihood.Surface s = likelihood.at(lambda, psi - bend);
        return new View(
                s.value(),
                s.dv(),
                s.du() + s.dv() * bend,
                s.duu() + 2 * s.duv() * bend + s.dvv() * bend * bend - s.dv() * bend,
                s.duv() + s.dvv() * bend);
    }
}
