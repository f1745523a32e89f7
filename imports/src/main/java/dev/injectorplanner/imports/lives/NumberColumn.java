package dev.injectorplanner.imports.lives;

import java.util.Arrays;

/** A column that grows, without boxing. */
final class NumberColumn {
    private double[] values = new double[64];
    private int size;

    void add(double value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    double[] toArray() {
        return Arrays.copyOf(values, size);
    }

    boolean[] toFlags() {
        boolean[] flags = new boolean[size];
        for (int i = 0; i < size; i++) {
            flags[i] = values[i] == 1;
        }
        return flags;
    }

    long[] toCounts() {
        long[] counts = new long[size];
        for (int i = 0; i < size; i++) {
            counts[i] = (long) values[i];
        }
        return counts;
    }
}
