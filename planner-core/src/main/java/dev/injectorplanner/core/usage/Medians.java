package dev.injectorplanner.core.usage;

/** Medians by selection, without sorting all. */
final class Medians {
    private Medians() {}

    /**
     * The median of the first {@code n} values, which change places; the mean of the middle two where {@code n} is even.
     *
     * @param n how many, 1 or more
     */
    static double median(double[] values, int n) {
        int middle = n / 2;
        double upper = select(values, n, middle);
        if (n % 2 == 1) {
            return upper;
        }
        double lower = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < middle; i++) {
            lower = Math.max(lower, values[i]);
        }
        return (lower + upper) / 2;
    }

    /** Hoare (1961): afterwards no value before {@code k} is above the one at {@code k}. */
    private static double select(double[] values, int n, int k) {
        int low = 0;
        int high = n - 1;
        while (low < high) {
            double pivot = values[(low + high) >>> 1];
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double swapped = values[i];
                    values[i++] = values[j];
                    values[j--] = swapped;
                }
            }
            if (k <= j) {
                high = j;
            } else if (k >= i) {
                low = i;
            } else {
                return values[k];
            }
        }
        return values[k];
    }
}
