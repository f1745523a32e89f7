package dev.injectorplanner.core.life;

import java.util.Arrays;

/**
 * Share of comparable pairs in which the higher predictor failed first (Harrell and others 1982; time-dependent rows as
 * in Therneau and Watson 2015). A failure at time t is compared with every row at risk then (start &lt; t) that stops
 * later, or stops at t alive; two failures at one time are not compared; equal predictors count one half.
 */
final class Concordance {
    private final int[] ranks;
    private final int[] tree;
    private long inTree;

    private Concordance(double[] predictors) {
        double[] values = predictors.clone();
        Arrays.sort(values);
        int distinct = 0;
        for (int i = 0; i < values.length; i++) {
            if (i == 0 || values[i] != values[i - 1]) {
                values[distinct++] = values[i];
            }
        }
        ranks = new int[predictors.length];
        for (int i = 0; i < ranks.length; i++) {
            ranks[i] = Arrays.binarySearch(values, 0, distinct, predictors[i]) + 1;
        }
        tree = new int[distinct + 1];
    }

    static double of(CoxDesign design, double[] predictors) {
        return new Concordance(predictors).share(design);
    }

    private double share(CoxDesign design) {
        double won = 0;
        double pairs = 0;
        int nextStart = design.rows - 1;
        int at = design.rows - 1;
        while (at >= 0) {
            double time = design.stops[design.byStop[at]];
            int end = at;
            while (nextStart >= 0 && design.starts[design.byStart[nextStart]] >= time) {
                change(design.byStart[nextStart--], -1);
            }
            for (; at >= 0 && design.stops[design.byStop[at]] == time; at--) {
                if (!design.records.isEvent(design.byStop[at])) {
                    change(design.byStop[at], 1);
                }
            }
            for (int i = end; i > at; i--) {
                int row = design.byStop[i];
                if (design.records.isEvent(row)) {
                    long below = count(ranks[row] - 1);
                    long equal = count(ranks[row]) - below;
                    won += below + 0.5 * equal;
                    pairs += inTree;
                }
            }
            for (int i = end; i > at; i--) {
                if (design.records.isEvent(design.byStop[i])) {
                    change(design.byStop[i], 1);
                }
            }
        }
        return pairs == 0 ? Double.NaN : won / pairs;
    }

    private void change(int row, int by) {
        inTree += by;
        for (int i = ranks[row]; i < tree.length; i += i & -i) {
            tree[i] += by;
        }
    }

    private long count(int rank) {
        long sum = 0;
        for (int i = rank; i > 0; i -= i & -i) {
            sum += tree[i];
        }
        return sum;
    }
}
