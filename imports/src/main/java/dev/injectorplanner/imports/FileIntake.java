package dev.injectorplanner.imports;

import dev.injectorplanner.imports.file.FileRefusedException;
import dev.injectorplanner.imports.file.HandOverFailed;
import dev.injectorplanner.imports.file.RawFile;
import dev.injectorplanner.imports.file.RawRows;
import dev.injectorplanner.imports.file.RawSheet;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.ArrayList;
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
    private record Found(RawSheet sheet, Table<?> table, Layout layout) {}

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
            Survey survey = Survey.of(sheet);
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
        if (looked.size() == 1) {
            looked.get(0).check().refuseOneColumn();
        }
        return looked;
    }

    private @Nullable Table<?> tableOf(Looked one, List<Looked> all) {
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
        Layout layout = one.check().layout(table, settings.dates(), said);
        said.forEach(text -> remark(one.sheet().name(), text));
        found.add(new Found(one.sheet(), table, layout));
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
        return new FileRefusedException(
                file,
                "matches no table, neither by its name nor by its headings",
                "name it after its table, or say which it is: " + Tables.names());
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
        private boolean belowHeadings;

        Delivery(Table<R> table, Found from, int sheetNumber) {
            this.table = table;
            this.from = from;
            this.sheetNumber = sheetNumber;
            this.maker = new RowMaker<>(table, from.layout(), from.sheet().countsCells(), settings.zoneOfTruck());
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
                belowHeadings = true;
                return;
            }
            try {
                handOver(line, cells);
            } catch (RuntimeException e) {
                throw new HandOverFailed(e);
            }
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
