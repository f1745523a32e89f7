package dev.injectorplanner.imports;

import dev.injectorplanner.imports.file.HandOverFailed;
import dev.injectorplanner.imports.file.RawFile;
import dev.injectorplanner.imports.file.RawRows;
import dev.injectorplanner.imports.file.RawSheet;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Takes one file in: looks it through, finds its tables, then hands over row by row. */
final class FileIntake {
    /** The most rows that a sheet of a workbook can have, and one more. */
    private static final int ROWS_OF_A_SHEET = 1_048_577;

    private final Path file;
    private final RawFile raw;
    private final ReadSettings settings;
    private final RowReceiver receiver;
    private final Map<Table<?>, SeenKeys> seen = new LinkedHashMap<>();
    private final List<Found> found = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();

    FileIntake(Path file, RawFile raw, ReadSettings settings, RowReceiver receiver) {
        this.file = file;
        this.raw = raw;
        this.settings = settings;
        this.receiver = receiver;
    }

    /** A sheet that was looked through. */
    private record Looked(RawSheet sheet, Survey survey, HeadingCheck check) {}

    /** A sheet whose table is known. */
    private record Found(RawSheet sheet, Table<?> table, Layout layout, long headingLine, boolean matched) {}

    void run() {
        List<Looked> looked = look();
        for (Looked one : looked) {
            Table<?> table = tableOf(one, looked);
            if (table == null) {
                remark(one.sheet().name(), "matches no table and was not read");
            } else {
                addFound(one, table, looked.size() > 1);
            }
        }
        if (found.isEmpty()) {
            throw noTable(looked);
        }
        found.sort(Comparator.comparingInt(one -> Tables.ALL.indexOf(one.table())));
        remarks.forEach(receiver::remark);
        for (int i = 0; i < found.size(); i++) {
            handOver(found.get(i), i);
        }
    }

    /** The sheets that hold anything and are not hidden. */
    private List<Looked> look() {
        List<Looked> looked = new ArrayList<>();
        int hidden = 0;
        for (RawSheet sheet : raw.sheets()) {
            Survey survey = Survey.of(sheet, new HeadingRow(settings, named(sheet)));
            if (survey.isEmpty()) {
                continue;
            }
            if (sheet.hidden()) {
                hidden++;
                remark(sheet.name(), "is hidden and was not read; show it in the workbook if it should be");
            } else {
                looked.add(new Looked(sheet, survey, new HeadingCheck(file, sheet, survey)));
            }
        }
        if (looked.isEmpty()) {
            throw hidden > 0
                    ? new FileRefusedException(file, "has rows in hidden sheets only", "show the sheet to be read")
                    : new FileRefusedException(file, "holds no rows", "export it again");
        }
        if (looked.size() == 1 && looked.get(0).survey().match() == null) {
            looked.get(0).check().refuseOneColumn();
        }
        return looked;
    }

    /** The table that a sheet must hold by what was said, or by its name. */
    private @Nullable Table<?> named(RawSheet sheet) {
        String name = sheet.name();
        Table<?> byName = name == null ? null : TableFinder.byName(name);
        return settings.as() != null ? settings.as() : byName;
    }

    private @Nullable Table<?> tableOf(Looked one, List<Looked> all) {
        FileMatch match = one.survey().match();
        if (match != null) {
            return Tables.get(match.table());
        }
        Table<?> as = settings.as();
        if (as != null) {
            boolean fits = new HeadingMatch<>(as, one.survey().headings(), settings.dates())
                    .missing()
                    .isEmpty();
            return all.size() == 1 || fits ? as : null;
        }
        String sheetName = one.sheet().name();
        Table<?> table = sheetName == null ? null : TableFinder.byName(sheetName);
        if (table == null && all.size() == 1) {
            table = TableFinder.byFileName(file);
        }
        return table == null ? TableFinder.byHeadings(one.survey().headings()) : table;
    }

    /** In a workbook of several tables one may have no rows yet. */
    private void addFound(Looked one, Table<?> table, boolean amongOthers) {
        if (amongOthers && one.survey().rows() == 0) {
            remark(one.sheet().name(), "has headings but no rows");
            return;
        }
        List<String> said = new ArrayList<>(one.sheet().remarks());
        Layout layout = one.check().layout(table, settings, said);
        said.forEach(text -> remark(one.sheet().name(), text));
        found.add(new Found(
                one.sheet(),
                table,
                layout,
                one.survey().headingLine(),
                one.survey().match() != null));
    }

    private FileRefusedException noTable(List<Looked> looked) {
        Table<?> as = settings.as();
        if (looked.stream().allMatch(one -> one.survey().rows() == 0)) {
            return new FileRefusedException(file, "has headings but no rows", "export it again, with its rows");
        }
        if (as != null) {
            return new FileRefusedException(
                    file,
                    "has no sheet with the columns of table " + as.name(),
                    "name the headings as in the template");
        }
        return NoTable.of(file, looked.get(0).survey().headings(), settings);
    }

    private void remark(@Nullable String sheet, String text) {
        remarks.add(new Remark(FileRefusedException.nameOf(file), sheet, text));
    }

    private void handOver(Found one, int sheetNumber) {
        new Delivery<>(one.table(), one, sheetNumber).run();
    }

    /** Hands over the rows of one sheet. */
    private final class Delivery<R> implements RawRows {
        private final Table<R> table;
        private final Found from;
        private final int sheetNumber;
        private final RowMaker<R> maker;
        private final @Nullable String[] above;
        private boolean belowHeadings;

        Delivery(Table<R> table, Found from, int sheetNumber) {
            this.table = table;
            this.from = from;
            this.sheetNumber = sheetNumber;
            this.above = new @Nullable String[from.layout().headings().size()];
            this.maker = new RowMaker<>(
                    table, from.layout(), from.sheet().countsCells() && !from.matched(), settings.zoneOfTruck());
        }

        void run() {
            try {
                from.sheet().read(this);
            } catch (HandOverFailed e) {
                throw e.failure();
            }
        }

        @Override
        public void row(long line, String[] cells) {
            if (RawRows.isBlank(cells)) {
                return;
            }
            if (!belowHeadings) {
                belowHeadings = line >= from.headingLine();
                return;
            }
            try {
                handOver(line, filled(cells));
            } catch (RuntimeException e) {
                throw new HandOverFailed(e);
            }
        }

        /** Blank cells that mean the same as the one above them get its text. */
        private String[] filled(String[] cells) {
            if (from.layout().asAbove().isEmpty()) {
                return cells;
            }
            String[] filled = Arrays.copyOf(cells, Math.max(cells.length, above.length));
            for (int at = 0; at < filled.length; at++) {
                filled[at] = filled[at] == null ? "" : filled[at];
            }
            for (int at : from.layout().asAbove()) {
                if (filled[at].isBlank() && above[at] != null) {
                    filled[at] = above[at];
                }
                above[at] = filled[at];
            }
            return filled;
        }

        private void handOver(long line, String[] cells) {
            RowPlace place = new RowPlace(from.layout(), line, cells);
            List<Complaint> problems = RowMaker.none();
            R row = maker.make(place, cells, problems);
            if (row != null) {
                refuseOtherContent(place, row, problems);
            }
            if (row == null || !problems.isEmpty()) {
                receiver.refused(table, place, problems);
            } else {
                receiver.row(table, place, row);
            }
        }

        private void refuseOtherContent(RowPlace place, R row, List<Complaint> problems) {
            String key = String.join(
                    "\u001F", table.key(row).stream().map(String::valueOf).toList());
            int code = (int) (place.line() + (long) sheetNumber * ROWS_OF_A_SHEET);
            int before = seen.computeIfAbsent(table, t -> new SeenKeys()).add(key, row.toString(), code);
            if (before > 0) {
                problems.add(new Complaint(
                        place.file(),
                        place.sheet(),
                        place.line(),
                        String.join(", ", table.keyColumns()),
                        table.keyText(row),
                        "is also in " + placeOf(before) + ", with different values",
                        "keep the correct one"));
            }
        }

        private String placeOf(int code) {
            String sheet = from.layout().sheet();
            if (sheet == null) {
                return "line " + code;
            }
            Found first = found.get((code - 1) / ROWS_OF_A_SHEET);
            String row = "row " + ((code - 1) % ROWS_OF_A_SHEET + 1);
            return first.equals(from)
                    ? row
                    : row + " of sheet \"" + first.layout().sheet() + "\"";
        }
    }
}
