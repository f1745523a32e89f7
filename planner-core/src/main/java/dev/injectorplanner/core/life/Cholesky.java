package dev.injectorplanner.core.life;

/** Inverse of a small symmetric positive matrix, which says at which column it fails to be positive. */
final class Cholesky {
    private static final double SMALLEST_PIVOT = 1e-10;

    private final double[][] factor;
    private final int failedAt;

    Cholesky(double[][] matrix) {
        int size = matrix.length;
        factor = new double[size][size];
        int failed = -1;
        for (int j = 0; j < size && failed < 0; j++) {
            for (int i = j; i < size; i++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= factor[i][k] * factor[j][k];
                }
                if (i == j) {
                    if (!(sum > SMALLEST_PIVOT * matrix[j][j] && sum > 0)) {
                        failed = j;
                        break;
                    }
                    factor[j][j] = Math.sqrt(sum);
                } else {
                    factor[i][j] = sum / factor[j][j];
                }
            }
        }
        failedAt = failed;
    }

    /** The first column that depends on those before it, or -1 if the matrix is positive. */
    int failedAt() {
        return failedAt;
    }

    double[] solve(double[] right) {
        int size = factor.length;
        double[] x = right.clone();
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= factor[i][k] * x[k];
            }
            x[i] /= factor[i][i];
        }
        for (int i = size - 1; i >= 0; i--) {
            for (int k = i + 1; k < size; k++) {
                x[i] -= factor[k][i] * x[k];
            }
            x[i] /= factor[i][i];
        }
        return x;
    }

    double[][] inverse() {
        int size = factor.length;
        double[][] inverse = new double[size][];
        for (int j = 0; j < size; j++) {
            double[] unit = new double[size];
            unit[j] = 1;
            inverse[j] = solve(unit);
        }
        return inverse;
    }
}
