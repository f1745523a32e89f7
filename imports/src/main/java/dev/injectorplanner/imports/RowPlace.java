package dev.injectorplanner.imports;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.CellNames;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where a row stands, with its cells as they stand there: enough to complain about it later. */
public final class RowPlace {
    private final Layout layout;
    private final long line;
    private final String[] cells;

    RowPlace(Layout layout, long line, String[] cells) {
        this.layout = layout;
        this.line = line;
        this.cells = cells;
    }

    /** A row that comes from elsewhere than a file, such as from a form. */
    public static RowPlace of(String source, long line) {
        return new RowPlace(new Layout(source, null, ',', List.of(), List.of(), List.of()), line, new String[0]);
    }

    /** Name of the file. */
    public String file() {
        return layout.file();
    }

    /** Name of the sheet, or null for a text file. */
    public @Nullable String sheet() {
        return layout.sheet();
    }

    /** Line in the file, or row in the sheet, as a person counts, from 1. */
    public long line() {
        return line;
    }

    /** The headings of the file as they stand there. */
    public List<String> headings() {
        return layout.headings();
    }

    /** The cells as they stand there, in the order of {@link #headings}; a ragged row has more or fewer. */
    public List<String> cells() {
        return List.of(cells);
    }

    /** What stands in a column, by its canonical name or its name without the unit; empty where it is not there. */
    public String cell(String column) {
        Layout.Place place = layout.find(column);
        return place == null ? "" : place.word(cells);
    }

    /** A complaint about a column of this row, by its canonical name or its name without the unit. */
    public Complaint complaint(String column, String reason, String fix) {
        Layout.Place place = layout.find(column);
        return place == null
                ? new Complaint(file(), sheet(), line, column, "", reason, fix)
                : complaintAt(place.at(), place.heading(), reason, fix);
    }

    /** A complaint about this row from what a record or a check refused. */
    public Complaint complaint(InvalidValueException refusal) {
        Layout.Place place = layout.find(refusal.field());
        if (place == null) {
            return new Complaint(
                    file(), sheet(), line, refusal.field(), refusal.value(), refusal.reason(), refusal.fix());
        }
        return complaintAt(place.at(), place.heading(), refusal.reason() + figuresOf(place, refusal), refusal.fix());
    }

    /** A record speaks of km and litres where the file may speak of miles and gallons. */
    private static String figuresOf(Layout.Place place, InvalidValueException refusal) {
        boolean converted = !place.heading().equals(place.column());
        boolean hasFigures = refusal.reason().chars().anyMatch(Character::isDigit);
        return converted && hasFigures
                ? " (in " + place.column().substring(place.base().length() + 1) + ")"
                : "";
    }

    Complaint complaintAt(int at, String column, String reason, String fix) {
        return new Complaint(file(), sheet(), line, cellName(at), column, cellAt(at), reason, fix);
    }

    Layout layout() {
        return layout;
    }

    private String cellAt(int at) {
        return at >= 0 && at < cells.length ? cells[at].strip() : "";
    }

    /** F42 for the sixth column of row 42 of a sheet; null in a text file. */
    private @Nullable String cellName(int at) {
        return layout.sheet() == null || at < 0 ? null : CellNames.column(at) + line;
    }
}
