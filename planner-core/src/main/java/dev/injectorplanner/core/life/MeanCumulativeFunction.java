package dev.injectorplanner.core.life;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Mean number of failures of one position up to each age, for positions that are repaired and go on. Source: Nelson
 * (1988); robust variance by Lawless and Nadeau (1995), Technometrics 37:158-168, which needs no assumption on how the
 * failures of one unit hang together.
 *
 * @param points one for each different age with a failure, ascending
 */
public record MeanCumulativeFunction(List<Point> points) {
    public MeanCumulativeFunction {
        points = List.copyOf(points);
    }

    /**
     * One step of the function.
     *
     * @param age age of the failures
     * @param atRisk units watched at this age, those ending at it included
     * @param events failures at this age over all units
     * @param mean mean number of failures a unit up to this age
     * @param stdErr robust standard error of the mean; NaN where only one unit was ever watched
     */
    public record Point(double age, int atRisk, int events, double mean, double stdErr) {}

    /**
     * The function of the histories.
     *
     * @throws NoEstimateException if there is no history at all
     */
    public static MeanCumulativeFunction of(List<RepeatHistory> histories) {
        if (histories.isEmpty()) {
            throw new NoEstimateException("There is no unit", "add at least one unit with its end");
        }
        return new MeanCumulativeFunction(new Walk(histories).points());
    }

    /**
     * For each unit i the sum over failure ages t of (d_i(t) - d(t) / n(t)) / n(t) while it is watched; the variance is
     * the sum of their squares. Units still watched share the second part, so only the spread of the first is carried.
     */
    private static final class Walk {
        private final double[] ends;
        private final int[] byEnd;
        private final double[] ages;
        private final int[] unitOf;
        private final double[] own;
        private double mean;
        private double common;
        private double ownMean;
        private double ownSpread;
        private double gone;
        private int watched;

        Walk(List<RepeatHistory> histories) {
            ends = histories.stream().mapToDouble(RepeatHistory::endAge).toArray();
            byEnd = SortOrder.ascending(ends);
            own = new double[ends.length];
            watched = ends.length;
            double[] all = new double[0];
            int[] units = new int[0];
            int size = 0;
            for (int unit = 0; unit < ends.length; unit++) {
                for (double age : histories.get(unit).eventAges()) {
                    if (size == all.length) {
                        all = Arrays.copyOf(all, 2 * size + 16);
                        units = Arrays.copyOf(units, 2 * size + 16);
                    }
                    all[size] = age;
                    units[size++] = unit;
                }
            }
            ages = Arrays.copyOf(all, size);
            unitOf = Arrays.copyOf(units, size);
        }

        List<Point> points() {
            int[] byAge = SortOrder.ascending(ages);
            List<Point> points = new ArrayList<>();
            int ended = 0;
            int at = 0;
            while (at < byAge.length) {
                double age = ages[byAge[at]];
                while (ends[byEnd[ended]] < age) {
                    leave(byEnd[ended++]);
                }
                int events = 0;
                while (at < byAge.length && ages[byAge[at]] == age) {
                    addOwn(unitOf[byAge[at++]], 1.0 / watched);
                    events++;
                }
                mean += (double) events / watched;
                common += events / ((double) watched * watched);
                double offset = ownMean - common;
                double variance = gone + ownSpread + watched * offset * offset;
                double stdErr = ends.length == 1 ? Double.NaN : Math.sqrt(variance);
                points.add(new Point(age, watched, events, mean, stdErr));
            }
            return points;
        }

        private void addOwn(int unit, double more) {
            double before = own[unit];
            own[unit] = before + more;
            double shift = more / watched;
            ownSpread += more * (2 * (before - ownMean) + more - shift);
            ownMean += shift;
        }

        private void leave(int unit) {
            double last = own[unit] - common;
            gone += last * last;
            if (watched == 1) {
                ownMean = 0;
                ownSpread = 0;
            } else {
                double off = own[unit] - ownMean;
                ownSpread = Math.max(0, ownSpread - off * off * watched / (watched - 1));
                ownMean -= off / (watched - 1);
            }
            watched--;
        }
    }
}
