package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.Require;

/** The records made ready for many sweeps: rows in order of time, covariates centred and scaled to unit spread. */
final class CoxDesign {
    final EffectRecords records;
    final int rows;
    final int width;
    final double[] starts;
    final double[] stops;
    final int[] byStop;
    final int[] byStart;
    final double[] means;
    final double[] spreads;
    final double[] ranges;
    final double[][] scaled;

    CoxDesign(EffectRecords records) {
        this.records = records;
        rows = records.size();
        width = records.names().size();
        starts = records.startColumn();
        stops = records.stopColumn();
        byStop = SortOrder.ascending(stops);
        byStart = SortOrder.ascending(starts);
        means = new double[width];
        spreads = new double[width];
        ranges = new double[width];
        scaled = new double[rows][width];
        for (int j = 0; j < width; j++) {
            scale(j);
        }
    }

    private void scale(int j) {
        double sum = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            double x = records.covariate(j, i);
            sum += x;
            low = Math.min(low, x);
            high = Math.max(high, x);
        }
        if (low == high) {
            throw new NoEstimateException(
                    "Covariate " + records.names().get(j) + " is "
                            + Require.plain(low)
                            + " in every row, so its effect cannot be told from the baseline",
                    "leave the column out");
        }
        means[j] = sum / rows;
        double squares = 0;
        for (int i = 0; i < rows; i++) {
            double off = records.covariate(j, i) - means[j];
            squares += off * off;
        }
        spreads[j] = Math.sqrt(squares / rows);
        ranges[j] = (high - low) / spreads[j];
        for (int i = 0; i < rows; i++) {
            scaled[i][j] = (records.covariate(j, i) - means[j]) / spreads[j];
        }
    }

    /** Sum of coefficient x scaled covariate for each row. */
    double[] predictors(double[] beta) {
        double[] predictors = new double[rows];
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int j = 0; j < width; j++) {
                sum += beta[j] * scaled[i][j];
            }
            predictors[i] = sum;
        }
        return predictors;
    }
}
