package dev.injectorplanner.app.forecast;

import java.util.ArrayList;
import java.util.List;

/**
 * Forecasts held against what happened. A forecast of an injector that came out before its 12 weeks were over counts for the time
 * that it was in: the hazard of the forecast is spread evenly over the 12 weeks.
 *
 * @param bands forecasts of like chance, the smallest first
 */
public record Calibration(List<Band> bands) {
    /** Days that a forecast looks ahead. */
    public static final int DAYS = 84;

    private static final double[] EDGES = {0, 0.01, 0.02, 0.05, 0.1, 0.2, 0.4, 1.000001};
    private static final double NINETY = 1.6448536269514722; // two-sided 90 % of the standard normal

    public Calibration {
        bands = List.copyOf(bands);
    }

    /**
     * A forecast with its outcome.
     *
     * @param chance within 12 weeks, 0..1
     * @param days days it was watched, at most 84
     * @param failed whether it failed within them
     */
    public record Outcome(double chance, long days, boolean failed) {
        double expected() {
            return -Math.expm1(Math.log1p(-Math.min(chance, 0.999999)) * Math.min(DAYS, days) / DAYS);
        }
    }

    /**
     * Forecasts between two chances.
     *
     * @param low from this chance
     * @param high below this one
     * @param count forecasts
     * @param expected failures that they let expect
     * @param failures failures that happened
     */
    public record Band(double low, double high, int count, double expected, int failures) {
        /** Mean chance forecast, 0..1. */
        public double forecast() {
            return expected / count;
        }

        /** Share that failed, 0..1. */
        public double happened() {
            return (double) failures / count;
        }

        /** Lower end of the 90 % interval of that share. */
        public double least() {
            return wilson(failures, count, -NINETY);
        }

        /** Upper end. */
        public double most() {
            return wilson(failures, count, NINETY);
        }
    }

    /**
     * An end of the score interval of a share (Wilson 1927).
     *
     * @param z standard normal quantile, below 0 for the lower end
     * @return 0..1
     */
    public static double wilson(int events, int of, double z) {
        double share = (double) events / of;
        double middle = (share + z * z / (2 * of)) / (1 + z * z / of);
        double half = z / (1 + z * z / of) * Math.sqrt(share * (1 - share) / of + z * z / (4.0 * of * of));
        return Math.max(0, Math.min(1, middle + half));
    }

    public static Calibration of(List<Outcome> outcomes) {
        List<Band> bands = new ArrayList<>();
        for (int at = 0; at < EDGES.length - 1; at++) {
            double low = EDGES[at];
            double high = EDGES[at + 1];
            List<Outcome> of = outcomes.stream()
                    .filter(each -> each.chance() >= low && each.chance() < high)
                    .toList();
            if (!of.isEmpty()) {
                bands.add(new Band(
                        low,
                        Math.min(1, high),
                        of.size(),
                        of.stream().mapToDouble(Outcome::expected).sum(),
                        (int) of.stream().filter(Outcome::failed).count()));
            }
        }
        return new Calibration(bands);
    }

    /** How many forecasts were held against what happened. */
    public int count() {
        return bands.stream().mapToInt(Band::count).sum();
    }

    public double expected() {
        return bands.stream().mapToDouble(Band::expected).sum();
    }

    public int failures() {
        return bands.stream().mapToInt(Band::failures).sum();
    }
}
