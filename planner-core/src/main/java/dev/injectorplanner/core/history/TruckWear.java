package dev.injectorplanner.core.history;

import dev.injectorplanner.core.numeric.Search;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.special.Gamma;

/**
 * How much faster than the usual each truck wears its injectors: idling, hills, fuel. A gamma frailty shared by all injectors of a
 * truck, found from what failed in it beside the failures expected from its lives; where the trucks do not clearly differ, none. Source:
 * Clayton (1978), Biometrika 65:141-151; Nielsen, Gill, Andersen and Sorensen (1992), Scandinavian Journal of Statistics
 * 19:25-43; limit of the likelihood ratio at the edge: Self and Liang (1987), Journal of the American Statistical Association
 * 82:605-610.
 */
public final class TruckWear {
    /** All trucks alike. */
    public static final TruckWear NONE = new TruckWear(Map.of(), Map.of(), Double.POSITIVE_INFINITY);

    private static final double ENOUGH_EVENTS = 20;
    private static final int ENOUGH_TRUCKS = 8;
    private static final double CLEARLY = 2.71;
    private static final double LEAST_SHAPE = 0.5;
    private static final double MOST_SHAPE = 2_000;
    private static final int SCANNED = 24;
    private static final double FURTHEST = 1.8;

    /** Factors are told apart by this step of their logarithm, so that trucks share what is worked out for a life. */
    private static final double STEP = 0.03;

    private final Map<String, Double> hazards;
    private final Map<String, Double> factors;
    private final double shape;

    private TruckWear(Map<String, Double> hazards, Map<String, Double> factors, double shape) {
        this.hazards = hazards;
        this.factors = factors;
        this.shape = shape;
    }

    /** Failures of trucks, and those expected from their lives. */
    static final class Tally {
        private final Map<String, double[]> trucks = new TreeMap<>();

        /**
         * Adds an injector.
         *
         * @param failed 1 for a failure, 0 for none, between for one that is believed in part
         * @param expected cumulative hazard over its observed life
         */
        void add(String truck, double failed, double expected) {
            double[] sums = trucks.computeIfAbsent(truck, none -> new double[2]);
            sums[0] += failed;
            sums[1] += expected;
        }

        /**
         * The trucks' wear.
         *
         * @param lifeShape shape of the part's life: hazard grows with wear to this power
         */
        TruckWear wear(double lifeShape) {
            double failed =
                    trucks.values().stream().mapToDouble(sums -> sums[0]).sum();
            if (failed < ENOUGH_EVENTS || trucks.size() < ENOUGH_TRUCKS) {
                return NONE;
            }
            double shape = Search.leastByRatio(k -> -logLikelihood(k), LEAST_SHAPE, MOST_SHAPE, SCANNED);
            double alike =
                    -trucks.values().stream().mapToDouble(sums -> sums[1]).sum();
            if (2 * (logLikelihood(shape) - alike) < CLEARLY) {
                return NONE;
            }
            Map<String, Double> hazards = new HashMap<>();
            Map<String, Double> factors = new HashMap<>();
            trucks.forEach((truck, sums) -> {
                double hazard = (shape + sums[0]) / (shape + sums[1]);
                hazards.put(truck, hazard);
                double most = Math.log(FURTHEST);
                double log = Math.max(-most, Math.min(most, Math.log(hazard) / lifeShape));
                factors.put(truck, Math.exp(STEP * Math.rint(log / STEP)));
            });
            return new TruckWear(Map.copyOf(hazards), Map.copyOf(factors), shape);
        }

        /** Of the counts, the hazards mixed over a gamma with mean 1; what does not hang on its shape is left out. */
        private double logLikelihood(double k) {
            double sum = 0;
            for (double[] sums : trucks.values()) {
                sum += Gamma.logGamma(k + sums[0])
                        - Gamma.logGamma(k)
                        - sums[0] * Math.log(k + sums[1])
                        - k * Math.log1p(sums[1] / k);
            }
            return sum;
        }
    }

    /** Whether trucks differ. */
    public boolean differs() {
        return !factors.isEmpty();
    }

    /** How much faster than usual a truck wears its injectors; 1 for one of which nothing is known. */
    public double of(String truck) {
        return factors.getOrDefault(truck, 1.0);
    }

    /** How many times the usual hazard a truck's injectors have; 1 for one of which nothing is known. */
    double hazardOf(String truck) {
        return hazards.getOrDefault(truck, 1.0);
    }

    /** Wear of the hardest of ten trucks against the usual, 1 where they do not differ. */
    public double hardestTenth() {
        return factors.values().stream()
                .sorted()
                .skip((long) (0.9 * factors.size()))
                .findFirst()
                .orElse(1.0);
    }

    /** Shape of the gamma that the trucks' hazards follow, the greater the more alike; infinite where they do not differ. */
    public double shape() {
        return shape;
    }
}
