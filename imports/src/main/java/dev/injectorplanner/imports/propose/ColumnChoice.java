package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which headings of a file are which columns of one table, by their words and by their values. */
final class ColumnChoice {
    private static final double LEAST = 0.35;
    private static final double SURE = 0.8;
    private static final double MISSING = 0.7;

    private final Table<?> table;
    private final Map<ColumnSample, Pick> picks = new LinkedHashMap<>();

    /** A heading's column, with how likely it is, 0 to 1. */
    record Pick(Column<?> column, double likeness, boolean byValues) {}

    private record Pair(ColumnSample sample, Column<?> column, double likeness, boolean byValues) {}

    private ColumnChoice(Table<?> table) {
        this.table = table;
    }

    static ColumnChoice of(Table<?> table, List<ColumnSample> samples, KnownNames known) {
        ColumnChoice choice = new ColumnChoice(table);
        List<Pair> pairs = new ArrayList<>();
        for (ColumnSample sample : samples) {
            TradeHeading heading = new TradeHeading(sample.heading());
            for (Column<?> column : table.columns()) {
                Pair pair = pair(heading.likeness(table, column), column, sample, known);
                if (pair.likeness() >= LEAST) {
                    pairs.add(pair);
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::likeness).reversed());
        Set<Column<?>> taken = new HashSet<>();
        for (Pair pair : pairs) {
            if (!choice.picks.containsKey(pair.sample()) && taken.add(pair.column())) {
                choice.picks.put(pair.sample(), new Pick(pair.column(), pair.likeness(), pair.byValues()));
            }
        }
        choice.joinTimes(samples);
        choice.joinCodes(samples);
        return choice;
    }

    private static Pair pair(double words, Column<?> column, ColumnSample sample, KnownNames known) {
        if (words == 0 && !isKnownByValues(column, known)) {
            return new Pair(sample, column, 0, false); // most pairs: their values need no look
        }
        double fits = sample.isEmpty() ? 1 : sample.share(cell -> CellTests.fits(column, cell));
        double byValues = 0;
        if (sample.share(CellTests::isEmptyWord) >= 1) {
            byValues = 0; // words for nothing say nothing
        } else if (column.kind() == (Object) CellKinds.VIN || column.kind() == (Object) CellKinds.FAULT_CODE) {
            byValues = !sample.isEmpty() && fits > 0.8 ? 0.6 : 0;
        } else if (column.base().equals("engine_hours")) {
            byValues = sample.share(TradeWords::saysHours) > 0.5 ? 0.6 : 0;
        } else if (known.has(column.name())) {
            double named = sample.share(cell -> known.alike(column.name(), cell).isPresent());
            byValues = named > 0.7 ? 0.6 : 0;
        }
        double byWords = fits < 0.3 ? 0.2 * words : words * (0.6 + 0.4 * fits);
        return new Pair(sample, column, Math.max(byWords, byValues), byValues > byWords);
    }

    private static boolean isKnownByValues(Column<?> column, KnownNames known) {
        return column.kind() == (Object) CellKinds.VIN
                || column.kind() == (Object) CellKinds.FAULT_CODE
                || column.base().equals("engine_hours")
                || known.has(column.name());
    }

    /** A column of times belongs to the moments whose column holds days only. */
    private void joinTimes(List<ColumnSample> samples) {
        Column<?> moment = table.columns().stream()
                .filter(column -> column.kind() == (Object) CellKinds.INSTANT && column.required())
                .findFirst()
                .orElse(null);
        boolean hasDays = picks.values().stream().anyMatch(pick -> pick.column() == moment);
        for (ColumnSample sample : samples) {
            boolean times = !sample.isEmpty() && sample.share(CellTests::isTime) > 0.8;
            if (moment != null && hasDays && times && !picks.containsKey(sample)) {
                picks.put(sample, new Pick(moment, SURE, false));
            }
        }
    }

    /** SPN and FMI in columns of their own are one code. */
    private void joinCodes(List<ColumnSample> samples) {
        Column<?> code = table.columns().stream()
                .filter(column -> column.kind() == (Object) CellKinds.FAULT_CODE)
                .findFirst()
                .orElse(null);
        ColumnSample spn = named(samples, "spn");
        ColumnSample fmi = named(samples, "fmi");
        if (code != null && spn != null && fmi != null) {
            picks.values().removeIf(pick -> pick.column() == code);
            picks.put(spn, new Pick(code, 1, false));
            picks.put(fmi, new Pick(code, 1, false));
        }
    }

    private static @org.jspecify.annotations.Nullable ColumnSample named(List<ColumnSample> samples, String name) {
        return samples.stream()
                .filter(sample -> sample.heading().equalsIgnoreCase(name))
                .findFirst()
                .orElse(null);
    }

    Table<?> table() {
        return table;
    }

    @org.jspecify.annotations.Nullable
    Pick pick(ColumnSample sample) {
        return picks.get(sample);
    }

    Map<ColumnSample, Pick> picks() {
        return picks;
    }

    boolean has(Column<?> column) {
        return picks.values().stream().anyMatch(pick -> pick.column() == column);
    }

    /** Required columns without a heading. */
    List<Column<?>> missing() {
        List<Column<?>> missing = new ArrayList<>();
        for (Column<?> column : table.columns()) {
            if (column.required() && !has(column)) {
                missing.add(column);
            }
        }
        return missing;
    }

    /** How well the table suits the file. */
    double score() {
        double found = picks.values().stream().mapToDouble(Pick::likeness).sum();
        return found - MISSING * missing().size();
    }
}
