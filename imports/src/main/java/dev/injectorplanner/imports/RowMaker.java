package dev.injectorplanner.imports;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.CellContext;
import dev.injectorplanner.imports.cell.CellText;
import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.RowValues;
import dev.injectorplanner.imports.table.Table;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Makes records of the rows of one sheet, or says all that is wrong with a row.
 *
 * @param <R> record of the table
 */
final class RowMaker<R> {
    private final Table<R> table;
    private final Layout layout;
    private final boolean countsCells;
    private final Function<String, @Nullable ZoneId> zoneOfTruck;
    private final List<Column<R>> columns;
    private final Layout.@Nullable Place truck;
    private final int leastCells;
    private final RowValues values = new RowValues();

    RowMaker(Table<R> table, Layout layout, boolean countsCells, Function<String, @Nullable ZoneId> zoneOfTruck) {
        this.table = table;
        this.layout = layout;
        this.countsCells = countsCells;
        this.zoneOfTruck = zoneOfTruck;
        this.columns = layout.places().stream()
                .map(place -> table.findColumn(place.column()).orElseThrow())
                .toList();
        this.truck = layout.find("truck");
        int last = layout.headings().size();
        while (last > 0 && layout.headings().get(last - 1).isBlank()) {
            last--;
        }
        this.leastCells = last;
    }

    /**
     * Makes the record of a row.
     *
     * @param problems takes what is wrong with the row
     * @return the record, or null if anything is wrong
     */
    @Nullable
    R make(RowPlace place, String[] cells, List<Complaint> problems) {
        refuseRagged(place, cells, problems);
        if (!problems.isEmpty()) {
            return null;
        }
        values.clear();
        String truckName = truck == null ? "" : truck.word(cells);
        for (int i = 0; i < columns.size(); i++) {
            read(columns.get(i), layout.places().get(i), place, cells, truckName, problems);
        }
        if (!problems.isEmpty()) {
            return null;
        }
        try {
            return table.make(values);
        } catch (InvalidValueException e) {
            problems.add(place.complaint(e));
            return null;
        }
    }

    private void read(
            Column<R> column,
            Layout.Place at,
            RowPlace place,
            String[] cells,
            String truckName,
            List<Complaint> problems) {
        try {
            String cell = at.text(cells);
            CellText.refuseErrors(at.heading(), cell);
            if (column.kind().holdsNumbers()) {
                ColumnUnit.refuseOther(at.heading(), cell, at.unit());
            }
            String text = at.form().plain(at.heading(), cell);
            if (!text.isEmpty()) {
                CellContext context = new CellContext(at.heading(), at.dates(), truckName, zoneOfTruck);
                Object value = column.kind().read(text, context);
                ColumnUnit unit = at.unit();
                values.put(column.name(), unit == null ? value : unit.toKept((Double) value));
            } else if (column.required()) {
                problems.add(place.complaintAt(at.at(), at.heading(), "is empty", "enter it: " + column.description()));
            }
        } catch (InvalidValueException e) {
            problems.add(place.complaintAt(at.at(), at.heading(), e.reason(), e.fix()));
        }
    }

    private void refuseRagged(RowPlace place, String[] cells, List<Complaint> problems) {
        int given = cells.length;
        while (given > layout.headings().size() && cells[given - 1].isBlank()) {
            given--;
        }
        boolean tooMany = given > layout.headings().size();
        if (tooMany && !countsCells) {
            problems.add(place.complaintAt(
                    given - 1, "", "the row has cells beyond the headings", "clear the cell, or give it a heading"));
        } else if (tooMany || (countsCells && given < leastCells)) {
            problems.add(place.complaint(
                    "",
                    "has " + given + (given == 1 ? " cell" : " cells") + ", the headings are "
                            + layout.headings().size(),
                    tooMany
                            ? "put quotation marks around a cell that holds the separator, or remove the extra cell"
                            : "add the missing cells, leaving one empty where there is no value"));
        }
    }

    /** The complaints about a row are gathered again for each row. */
    static List<Complaint> none() {
        return new ArrayList<>(0);
    }
}
