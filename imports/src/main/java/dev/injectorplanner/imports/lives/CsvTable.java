package dev.injectorplanner.imports.lives;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;

/** A CSV file with its headings understood, read row by row; it gathers what is wrong and refuses at the end. */
final class CsvTable {
    private static final int MOST_COMPLAINTS = 100;

    private final Path file;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final List<String> others = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();
    private int complaintCount;
    private int width;

    private CsvTable(Path file) {
        this.file = file;
    }

    /**
     * Reads the headings.
     *
     * @param needed headings that must be there
     * @param optional headings that may be
     * @param keepOthers whether all other columns are wanted too, under their own names
     */
    static CsvTable open(Path file, List<String> needed, List<String> optional, boolean keepOthers)
            throws LivesRefusedException {
        CsvTable table = new CsvTable(file);
        if (!Files.isRegularFile(file)) {
            throw new LivesRefusedException("\"" + file + "\": no such file. Fix: check the name and the folder.");
        }
        try (CsvReader<CsvRecord> reader = table.reader()) {
            Iterator<CsvRecord> rows = reader.iterator();
            if (!rows.hasNext()) {
                throw new LivesRefusedException(table.name() + " is empty. Fix: give it a line of headings, with "
                        + String.join(", ", needed) + " among them, and one line per injector life.");
            }
            table.headings(rows.next().getFields(), needed, optional, keepOthers);
        } catch (IOException | CsvParseException e) {
            throw table.unreadable(e);
        }
        return table;
    }

    private CsvReader<CsvRecord> reader() throws IOException {
        return CsvReader.builder()
                .detectBomHeader(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(file);
    }

    private LivesRefusedException unreadable(Exception cause) {
        Throwable deepest = cause;
        while (deepest.getCause() != null) {
            deepest = deepest.getCause();
        }
        return new LivesRefusedException(name() + " cannot be read as CSV: " + deepest.getMessage()
                + ". Fix: save it as CSV with commas, in UTF-8, each opened quote closed.");
    }

    private void headings(List<String> cells, List<String> needed, List<String> optional, boolean keepOthers)
            throws LivesRefusedException {
        width = cells.size();
        if (width == 1 && cells.get(0).contains(";")) {
            throw new LivesRefusedException(name()
                    + " separates its columns by semicolons. Fix: save it with commas between columns and points in"
                    + " numbers.");
        }
        for (int i = 0; i < width; i++) {
            heading(cells.get(i).strip(), i, needed, optional, keepOthers);
        }
        for (String want : needed) {
            if (!columns.containsKey(want)) {
                complain(name() + " has no column \"" + want + "\"; its headings are " + String.join(", ", cells)
                        + ". Fix: name the column \"" + want + "\" in the first line.");
            }
        }
        refuseIfAny();
    }

    private void heading(String name, int at, List<String> needed, List<String> optional, boolean keepOthers) {
        String canonical = name.toLowerCase(Locale.ROOT).replace(" ", "");
        boolean known = needed.contains(canonical) || optional.contains(canonical);
        if (!known && !keepOthers) {
            remarks.add(name() + ": column \"" + name + "\" is not used.");
            return;
        }
        if (name.isEmpty()) {
            complain(name() + ", column " + (at + 1) + " has no heading. Fix: name it or remove it.");
            return;
        }
        String key = known ? canonical : name;
        if (columns.putIfAbsent(key, at) != null) {
            complain(name() + " has the heading \"" + name + "\" twice. Fix: rename or remove one of them.");
        } else if (!known) {
            others.add(name);
        }
    }

    /** Hands each row to {@code taker}, then refuses the file if anything was wrong in any of them. */
    void forEachRow(Consumer<CsvRow> taker) throws LivesRefusedException {
        int rows = 0;
        try (CsvReader<CsvRecord> reader = reader()) {
            Iterator<CsvRecord> records = reader.iterator();
            records.next();
            CsvRow row = new CsvRow(this);
            while (records.hasNext()) {
                CsvRecord cells = records.next();
                rows++;
                row.moveTo(cells);
                if (cells.getFieldCount() == width) {
                    taker.accept(row);
                } else {
                    complain(name() + ", line " + cells.getStartingLineNumber() + " has " + cells.getFieldCount()
                            + " cells, but there are " + width
                            + " headings. Fix: check for a missing or extra comma.");
                }
            }
        } catch (IOException | CsvParseException e) {
            throw unreadable(e);
        }
        if (rows == 0) {
            complain(name() + " has headings but no rows. Fix: add a line for each life.");
        }
        refuseIfAny();
    }

    void complain(String complaint) {
        complaintCount++;
        if (complaints.size() < MOST_COMPLAINTS) {
            complaints.add(complaint);
        }
    }

    void refuseIfAny() throws LivesRefusedException {
        if (complaintCount > complaints.size()) {
            complaints.add("... and " + (complaintCount - MOST_COMPLAINTS) + " more like these.");
        }
        if (!complaints.isEmpty()) {
            throw new LivesRefusedException(complaints);
        }
    }

    /** The file's own name, for messages. */
    String name() {
        return String.valueOf(file.getFileName());
    }

    boolean has(String column) {
        return columns.containsKey(column);
    }

    /** Place of a column that is there. */
    int place(String column) {
        Integer at = columns.get(column);
        if (at == null) {
            throw new IllegalArgumentException("no column " + column);
        }
        return at;
    }

    /** Columns beyond those asked for by name, as the file spells them. */
    List<String> otherColumns() {
        return List.copyOf(others);
    }

    List<String> remarks() {
        return List.copyOf(remarks);
    }
}
