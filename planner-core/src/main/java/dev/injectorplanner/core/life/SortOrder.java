package dev.injectorplanner.core.life;

/** Row numbers in ascending order of a column, ties in the order of the rows: a merge sort without boxing. */
final class SortOrder {
    private static final int SHORT = 24;

    private SortOrder() {}

    static int[] ascending(double[] keys) {
        int[] order = new int[keys.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        sort(keys, order, new int[order.length], 0, order.length);
        return order;
    }

    private static void sort(double[] keys, int[] order, int[] spare, int from, int to) {
        if (to - from <= SHORT) {
            insertion(keys, order, from, to);
            return;
        }
        int middle = (from + to) >>> 1;
        sort(keys, order, spare, from, middle);
        sort(keys, order, spare, middle, to);
        if (keys[order[middle - 1]] <= keys[order[middle]]) {
            return;
        }
        System.arraycopy(order, from, spare, from, middle - from);
        int left = from;
        int right = middle;
        int out = from;
        while (left < middle && right < to) {
            order[out++] = keys[spare[left]] <= keys[order[right]] ? spare[left++] : order[right++];
        }
        System.arraycopy(spare, left, order, out, middle - left);
    }

    private static void insertion(double[] keys, int[] order, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            int row = order[i];
            double key = keys[row];
            int j = i;
            while (j > from && keys[order[j - 1]] > key) {
                order[j] = order[j - 1];
                j--;
            }
            order[j] = row;
        }
    }
}
