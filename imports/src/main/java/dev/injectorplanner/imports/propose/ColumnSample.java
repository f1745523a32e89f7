package dev.injectorplanner.imports.propose;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What stands in one column of a foreign file: its different values and how often each is there. */
final class ColumnSample {
    private static final int MOST = 5_000;

    private final String heading;
    private final Map<String, Long> values = new LinkedHashMap<>();
    private long blanks;
    private long rows;

    ColumnSample(String heading) {
        this.heading = heading;
    }

    void add(String cell) {
        rows++;
        if (cell.isEmpty()) {
            blanks++;
        } else if (values.size() < MOST || values.containsKey(cell)) {
            values.merge(cell, 1L, Long::sum);
        }
    }

    String heading() {
        return heading;
    }

    Map<String, Long> values() {
        return values;
    }

    long blanks() {
        return blanks;
    }

    boolean isEmpty() {
        return values.isEmpty();
    }

    long filled() {
        return rows - blanks;
    }

    /** Rows whose value fulfils a condition. */
    long rows(Predicate<String> condition) {
        return values.entrySet().stream()
                .filter(each -> condition.test(each.getKey()))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    /** Share of the rows with a value, 0 to 1. */
    double share(Predicate<String> condition) {
        long all = rows(value -> true);
        return all == 0 ? 0 : rows(condition) / (double) all;
    }

    /** The first different values. */
    List<String> first(int number) {
        return values.keySet().stream().limit(number).toList();
    }

    /** The most frequent values. */
    List<Map.Entry<String, Long>> frequent(int number) {
        return values.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder()))
                .limit(number)
                .toList();
    }
}
