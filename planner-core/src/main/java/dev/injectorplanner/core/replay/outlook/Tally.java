package dev.injectorplanner.core.replay.outlook;

import dev.injectorplanner.core.replay.run.Journal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What each run used, by depot, month and kind of figure; all depots stand under an empty name. */
final class Tally {
    private static final String ALL = "";

    private enum Figure {
        INJECTORS,
        FAILURES,
        VISITS,
        HOURS,
        LITRES,
        MONEY
    }

    private final YearMonth first;
    private final int months;
    private final int runs;
    private final boolean[] finished;
    private final Map<String, double[][][]> figures = new TreeMap<>();
    private final Map<String, Map<String, double[][]>> pieces = new TreeMap<>();

    /** @param depots names of the depots that have trucks */
    Tally(LocalDate from, int months, int runs, List<String> depots) {
        this.first = YearMonth.from(from);
        this.months = months;
        this.runs = runs;
        this.finished = new boolean[runs];
        List<String> names = new ArrayList<>(depots);
        names.add(ALL);
        for (String depot : names) {
            figures.put(depot, new double[Figure.values().length][months + 1][runs]);
            pieces.put(depot, new TreeMap<>());
        }
    }

    /** A run was played to its end: only such runs count. */
    void finish(int run) {
        finished[run] = true;
    }

    private Band band(double[] values) {
        return Band.of(IntStream.range(0, runs)
                .filter(run -> finished[run])
                .mapToDouble(run -> values[run])
                .toArray());
    }

    /** The journal of one run. Runs may be told at the same time. */
    Journal of(int run) {
        return work -> {
            // the week that holds today may have begun in the month before
            int month = Math.max(
                    0, (int) ChronoUnit.MONTHS.between(first, YearMonth.from(LocalDate.ofEpochDay(work.day()))));
            if (month < months) {
                add(work.truck().depot(), month, run, work);
                add(ALL, month, run, work);
                add(work.truck().depot(), months, run, work);
                add(ALL, months, run, work);
            }
        };
    }

    private void add(String depot, int month, int run, Journal.Work work) {
        double[][][] all = figures.get(depot);
        if (all == null) {
            throw new IllegalStateException("depot " + depot + " has no trucks in the outlook");
        }
        all[Figure.INJECTORS.ordinal()][month][run] += work.injectors();
        all[Figure.FAILURES.ordinal()][month][run] += work.failed();
        all[Figure.VISITS.ordinal()][month][run]++;
        all[Figure.HOURS.ordinal()][month][run] += work.hours();
        all[Figure.LITRES.ordinal()][month][run] += work.litres();
        all[Figure.MONEY.ordinal()][month][run] += work.cost();
        work.pieces().forEach((part, count) -> piecesOf(depot, part)[month][run] += count);
    }

    private double[][] piecesOf(String depot, String part) {
        synchronized (pieces) {
            Map<String, double[][]> ofDepot = pieces.computeIfAbsent(depot, name -> new TreeMap<>());
            return ofDepot.computeIfAbsent(part, name -> new double[months + 1][runs]);
        }
    }

    /** Months of all depots. */
    List<Outlook.Month> months() {
        return months(ALL);
    }

    /** Months by depot. */
    List<Outlook.Month> depots() {
        List<Outlook.Month> rows = new ArrayList<>();
        figures.keySet().stream().filter(depot -> !depot.equals(ALL)).forEach(depot -> rows.addAll(months(depot)));
        return rows;
    }

    private List<Outlook.Month> months(String depot) {
        List<Outlook.Month> rows = new ArrayList<>();
        for (int month = 0; month < months; month++) {
            rows.add(month(depot, month));
        }
        return rows;
    }

    /** All months together stand in the place after the last one, under the first month's name. */
    List<Outlook.Month> totals() {
        List<Outlook.Month> rows = new ArrayList<>();
        figures.keySet().forEach(depot -> rows.add(month(depot, months)));
        return rows;
    }

    private Outlook.Month month(String depot, int month) {
        return new Outlook.Month(
                first.plusMonths(month == months ? 0 : month),
                named(depot),
                band(depot, Figure.INJECTORS, month),
                band(depot, Figure.FAILURES, month),
                band(depot, Figure.VISITS, month),
                band(depot, Figure.HOURS, month),
                band(depot, Figure.LITRES, month),
                band(depot, Figure.MONEY, month));
    }

    private Band band(String depot, Figure figure, int month) {
        double[][][] all = figures.get(depot);
        return all == null ? Band.NONE : band(all[figure.ordinal()][month]);
    }

    private static @Nullable String named(String depot) {
        return depot.equals(ALL) ? null : depot;
    }

    /** Pieces, all depots first, by part and month. */
    List<Outlook.PartMonth> parts() {
        List<Outlook.PartMonth> rows = new ArrayList<>();
        pieces.forEach((depot, ofDepot) -> ofDepot.forEach((part, counts) -> {
            for (int month = 0; month < months; month++) {
                rows.add(new Outlook.PartMonth(first.plusMonths(month), named(depot), part, band(counts[month])));
            }
        }));
        return rows;
    }

    /** Pieces of all months together, all depots first, by part. */
    List<Outlook.PartMonth> partTotals() {
        List<Outlook.PartMonth> rows = new ArrayList<>();
        pieces.forEach((depot, ofDepot) -> ofDepot.forEach(
                (part, counts) -> rows.add(new Outlook.PartMonth(first, named(depot), part, band(counts[months])))));
        return rows;
    }
}
