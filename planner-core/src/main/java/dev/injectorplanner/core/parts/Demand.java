package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.check.Require;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.special.Erf;

/**
 * How many pieces will be asked for: a distribution over 0, 1, 2 and so on.
 *
 * <p>The number of failures among independent injectors with unequal chances p is Poisson-binomial (Wang 1993, Statistica
 * Sinica 3:295-312). It is worked out exactly by convolution as long as that takes no more than {@link #EXACT_WORK}
 * steps. Beyond, the better of two approximations stands in, by its bound on the error of every cumulated chance:
 *
 * <ul>
 *   <li>Poisson of the same mean m: at most min(1, 1/m) times the sum of p squared (Barbour and Hall 1984, sharper than
 *       the sum of p squared of Le Cam 1960);
 *   <li>normal with a term for skewness, for a standard deviation s of 10 or more: at most (s + 3) / (4 s^3) (1/4 +
 *       exp(-3 s / 2)) (Mikhailov 1993, as quoted by Neammanee 2005; from memory, and tried against the exact one).
 * </ul>
 */
public final class Demand {
    /** Steps of a convolution up to which the exact distribution is worked out. */
    public static final long EXACT_WORK = 50_000_000;

    private static final double TAIL = 1e-18;
    private static final double LEAST_NORMAL_SPREAD = 10;

    private final double[] cumulated;
    private final double mean;
    private final double errorBound;
    private final String method;

    private Demand(double[] cumulated, double mean, double errorBound, String method) {
        this.cumulated = cumulated;
        this.mean = mean;
        this.errorBound = errorBound;
        this.method = method;
    }

    /**
     * Failures among independent injectors, exact where the work allows.
     *
     * @param chances chance of each, 0 to 1
     */
    public static Demand ofChances(double[] chances) {
        Moments moments = new Moments(chances);
        double width = Math.min(chances.length, moments.mean + 14 * Math.sqrt(moments.variance) + 50);
        return chances.length * width <= EXACT_WORK ? exact(chances) : approximate(moments);
    }

    /** The exact distribution, whatever the work. */
    public static Demand exact(double[] chances) {
        Moments moments = new Moments(chances);
        PieceCount count = new PieceCount();
        for (double chance : chances) {
            count.add(chance);
        }
        return new Demand(cumulated(count.toArray()), moments.mean, 0, "exact Poisson-binomial");
    }

    /** The better of the two approximations, by its bound. */
    public static Demand approximate(double[] chances) {
        return approximate(new Moments(chances));
    }

    private static Demand approximate(Moments moments) {
        double byPoisson = poissonBound(moments);
        double byNormal = normalBound(moments);
        return byPoisson <= byNormal ? poisson(moments.mean, byPoisson) : normal(moments, byNormal);
    }

    /** Bound on the error of every cumulated chance when a Poisson distribution stands in. */
    public static double poissonBound(double[] chances) {
        return poissonBound(new Moments(chances));
    }

    private static double poissonBound(Moments moments) {
        return moments.mean == 0 ? 0 : Math.min(1, Math.min(1, 1 / moments.mean) * moments.squares);
    }

    private static double normalBound(Moments moments) {
        double s = Math.sqrt(moments.variance);
        return s < LEAST_NORMAL_SPREAD ? 1 : (s + 3) / (4 * s * s * s) * (0.25 + Math.exp(-1.5 * s));
    }

    /** Poisson demand, such as failures of many like injectors. */
    public static Demand poisson(double mean) {
        return poisson(Require.within("mean", mean, 0, 1e6), 0);
    }

    /** Terms outwards from the mode, then scaled to a sum of 1: exact for any mean, without logarithms. */
    private static Demand poisson(double mean, double errorBound) {
        int mode = (int) mean;
        int last = (int) (mean + 12 * Math.sqrt(mean) + 40);
        double[] terms = new double[last + 1];
        terms[mode] = 1;
        for (int k = mode; k > 0; k--) {
            terms[k - 1] = terms[k] * k / mean;
        }
        for (int k = mode; k < last; k++) {
            terms[k + 1] = terms[k] * mean / (k + 1);
        }
        double sum = Arrays.stream(terms).sum();
        for (int k = 0; k <= last; k++) {
            terms[k] /= sum;
        }
        return new Demand(cumulated(terms), mean, errorBound, "Poisson");
    }

    private static Demand normal(Moments moments, double errorBound) {
        double s = Math.sqrt(moments.variance);
        int last = (int) Math.min(moments.pieces, moments.mean + 12 * s + 40);
        double[] cumulated = new double[last + 1];
        double before = 0;
        for (int k = 0; k <= last; k++) {
            double x = (k + 0.5 - moments.mean) / s;
            double skewed =
                    moments.third / (s * s * s) * (1 - x * x) * Math.exp(-x * x / 2) / (6 * Math.sqrt(2 * Math.PI));
            before = Math.max(before, Math.min(1, 0.5 * Erf.erfc(-x / Math.sqrt(2)) + skewed));
            cumulated[k] = before;
        }
        return new Demand(cumulated, moments.mean, errorBound, "normal with skewness");
    }

    /** Any of several, each as likely as the others: a lead time that may be shorter or longer. */
    public static Demand anyOf(List<Demand> demands) {
        int last =
                demands.stream().mapToInt(each -> each.cumulated.length).max().orElse(1) - 1;
        double[] cumulated = new double[last + 1];
        for (int k = 0; k <= last; k++) {
            for (Demand each : demands) {
                cumulated[k] += each.chanceOfAtMost(k) / demands.size();
            }
        }
        return new Demand(
                cumulated,
                demands.stream().mapToDouble(Demand::mean).average().orElse(0),
                demands.stream().mapToDouble(Demand::errorBound).max().orElse(0),
                demands.isEmpty() ? "none" : demands.get(demands.size() - 1).method);
    }

    private static double[] cumulated(double[] chances) {
        double[] sums = new double[chances.length];
        double sum = 0;
        for (int k = 0; k < chances.length; k++) {
            sum += chances[k];
            sums[k] = Math.min(1, sum);
        }
        return sums;
    }

    /** Expected pieces. */
    public double mean() {
        return mean;
    }

    /** How far any cumulated chance may be off; 0 where exact. */
    public double errorBound() {
        return errorBound;
    }

    /** How it was worked out, in words. */
    public String method() {
        return method;
    }

    /** Chance of exactly this many. */
    public double chanceOf(int pieces) {
        return chanceOfAtMost(pieces) - chanceOfAtMost(pieces - 1);
    }

    /** Chance of this many or fewer. */
    public double chanceOfAtMost(int pieces) {
        return pieces < 0 ? 0 : pieces >= cumulated.length ? 1 : cumulated[pieces];
    }

    /**
     * The smallest stock that covers the demand with at least a chance.
     *
     * @param serviceLevel above 0 and below 1
     */
    public int smallestStock(double serviceLevel) {
        if (!(serviceLevel > 0 && serviceLevel < 1)) {
            Require.within("service_level", serviceLevel, Double.MIN_VALUE, Math.nextDown(1.0));
        }
        int stock = 0;
        while (chanceOfAtMost(stock) < serviceLevel) {
            stock++;
        }
        return stock;
    }

    /** Pieces asked for beyond a stock, on average. */
    public double expectedShortage(int stock) {
        double sum = 0;
        for (int k = Math.max(0, stock); k < cumulated.length; k++) {
            double above = 1 - cumulated[k];
            sum += above > TAIL ? above : 0;
        }
        return sum;
    }

    private static final class Moments {
        final int pieces;
        double mean;
        double variance;
        double third;
        double squares;

        Moments(double[] chances) {
            pieces = chances.length;
            for (double p : chances) {
                Require.within("chance", p, 0, 1);
                mean += p;
                variance += p * (1 - p);
                third += p * (1 - p) * (1 - 2 * p);
                squares += p * p;
            }
        }
    }
}
