package dev.injectorplanner.reports.table;

import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.util.List;

/** A table as a sheet of a workbook. */
public final class SheetTable {
    private SheetTable() {}

    /**
     * Adds a finished sheet.
     *
     * @param name the sheet's name
     * @param rows its rows, in their order
     */
    public static <R> TableSheet add(
            Book book, String name, String title, String remark, List<TableColumn<R>> columns, List<R> rows) {
        TableSheet sheet = book.table(
                name,
                title,
                remark,
                columns.stream()
                        .map(column ->
                                new SheetColumn(heading(book, column), column.format(), column.width(), column.total()))
                        .toList());
        rows.forEach(row -> sheet.row(
                columns.stream().map(column -> column.value().apply(row)).toArray()));
        return sheet.finish();
    }

    private static String heading(Book book, TableColumn<?> column) {
        return column.unit() == Unit.MONEY ? book.form().money(column.heading()) : column.headingWithUnit();
    }
}
