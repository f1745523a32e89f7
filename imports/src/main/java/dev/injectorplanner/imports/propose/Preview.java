package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.Remark;
import dev.injectorplanner.imports.RowPlace;
import dev.injectorplanner.imports.RowReceiver;
import dev.injectorplanner.imports.TableReader;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.ColumnMatch;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The first rows of a file as a match would read them, before anything refers to the store. Local times are shown as they are.
 *
 * @param columns headings of the table's columns that the file fills
 * @param rows the first rows
 * @param good rows that can be read
 * @param refused rows that cannot
 * @param refusal why nothing can be read, or empty
 */
public record Preview(List<String> columns, List<Row> rows, long good, long refused, String refusal) {
    /**
     * One row.
     *
     * @param cells as they would be stored, in the order of the columns; empty where the row is refused
     * @param problem why it is refused, or empty
     */
    public record Row(long line, List<String> cells, String problem) {}

    /**
     * The preview of a file.
     *
     * @param known names that are stored already
     * @param most rows to show
     */
    static Preview of(Path file, FileMatch match, KnownNames known, int most) {
        Table<?> table = Tables.get(match.table());
        FileMatch readable = readable(match);
        Shown shown = new Shown(table, columns(table, readable), most);
        try {
            TableReader.read(
                    file,
                    ReadSettings.standard(truck -> ZoneOffset.UTC)
                            .withMatches(List.of(readable))
                            .withNameOf(
                                    (column, cell) -> known.alike(column, cell).orElse(cell)),
                    shown);
            return new Preview(shown.names(), shown.rows, shown.good, shown.refused, "");
        } catch (FileRefusedException e) {
            return new Preview(shown.names(), List.of(), 0, 0, e.reason() + ". Fix: " + e.fix() + ".");
        }
    }

    /** What is still asked is left out. */
    private static FileMatch readable(FileMatch match) {
        List<ColumnMatch> columns = match.columns().stream()
                .map(column -> column.column().equals(FileMatch.ASK) ? column.to("") : column)
                .map(column -> column.with(without(column.values())))
                .toList();
        return new FileMatch(
                match.source(),
                match.table(),
                columns,
                match.numbers(),
                match.dates(),
                match.century(),
                match.emptyWords(),
                match.ignored(),
                without(match.fixed()),
                Set.of());
    }

    private static Map<String, String> without(Map<String, String> answers) {
        Map<String, String> known = new LinkedHashMap<>(answers);
        known.values().removeIf(FileMatch.ASK::equals);
        return known;
    }

    private static List<Integer> columns(Table<?> table, FileMatch match) {
        List<Integer> used = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            Column<?> column = table.columns().get(i);
            boolean filled =
                    match.columns().stream().anyMatch(each -> column.headings().contains(each.column()))
                            || column.headings().stream().anyMatch(match.fixed()::containsKey);
            if (filled) {
                used.add(i);
            }
        }
        return used;
    }

    private static final class Shown implements RowReceiver {
        private final Table<?> shownTable;
        private final List<Integer> used;
        private final int most;
        private final List<Row> rows = new ArrayList<>();
        private long good;
        private long refused;

        Shown(Table<?> shownTable, List<Integer> used, int most) {
            this.shownTable = shownTable;
            this.used = used;
            this.most = most;
        }

        List<String> names() {
            return used.stream().map(at -> shownTable.columns().get(at).name()).toList();
        }

        @Override
        public <R> void row(Table<R> table, RowPlace place, R row) {
            good++;
            if (rows.size() < most) {
                List<String> all = table.cells(row);
                rows.add(new Row(place.line(), used.stream().map(all::get).toList(), ""));
            }
        }

        @Override
        public void refused(Table<?> table, RowPlace place, List<Complaint> complaints) {
            refused++;
            if (rows.size() < most) {
                Complaint first = complaints.get(0);
                rows.add(new Row(
                        place.line(),
                        List.of(),
                        (first.column().isEmpty() ? "" : first.column() + " \"" + first.value() + "\": ")
                                + first.reason()));
            }
        }

        @Override
        public void remark(Remark remark) {
            // nothing of it concerns single rows
        }
    }
}
