package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TableColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A page of tables.
 *
 * @param title its title
 * @param about a line below it
 * @param path its address
 * @param fields figures in its head
 * @param links name and address, such as workbooks
 * @param sections its sections
 */
public record TablesView(
        String title, String about, String path, List<Field> fields, List<Field> links, List<Section> sections) {
    public TablesView {
        fields = List.copyOf(fields);
        links = List.copyOf(links);
        sections = List.copyOf(sections);
    }

    /** A label with its value, or the name of a link with its address. */
    public record Field(String label, String value) {}

    /** A column; figures stand at the right. */
    public record Column(String name, boolean figure) {}

    /** A cell with the address it leads to, or an empty one. */
    public record Cell(String text, String link) {}

    /**
     * A section.
     *
     * @param lead said above the table; alone where there are no rows
     */
    public record Section(
            String letter, String title, String aside, String lead, List<Column> columns, List<List<Cell>> rows) {}

    /** Gathers a section. */
    public static final class Rows {
        private final String letter;
        private final String title;
        private final List<Column> columns = new ArrayList<>();
        private final List<List<Cell>> rows = new ArrayList<>();

        /** @param columns names; one that begins with # holds figures */
        public Rows(String letter, String title, String... columns) {
            this.letter = letter;
            this.title = title;
            for (String column : columns) {
                boolean figure = column.startsWith("#");
                this.columns.add(new Column(figure ? column.substring(1) : column, figure));
            }
        }

        /**
         * Rows by the description of their columns.
         *
         * @param link where a row's first cell leads, or an empty text
         */
        public static <R> Rows of(
                String letter,
                String title,
                SiteUnits units,
                List<TableColumn<R>> columns,
                List<R> rows,
                Function<R, String> link) {
            PageCell cell = new PageCell(units);
            Rows shown = new Rows(letter, title);
            columns.forEach(column -> shown.columns.add(new Column(cell.heading(column), column.isFigure())));
            rows.forEach(row -> shown.linked(
                    link.apply(row),
                    columns.stream().map(column -> cell.text(column, row)).toArray(String[]::new)));
            return shown;
        }

        public Rows row(String... cells) {
            return linked("", cells);
        }

        /** A row whose first cell leads somewhere. */
        public Rows linked(String link, String... cells) {
            List<Cell> row = new ArrayList<>();
            for (String cell : cells) {
                row.add(new Cell(cell, row.isEmpty() ? link : ""));
            }
            rows.add(row);
            return this;
        }

        /** @param empty what to do next, said where there are no rows */
        public Section section(String aside, String lead, String empty) {
            return new Section(letter, title, aside, rows.isEmpty() ? empty : lead, columns, rows);
        }
    }
}
