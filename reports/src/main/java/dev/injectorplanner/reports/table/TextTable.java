package dev.injectorplanner.reports.table;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Lines in columns for the terminal and for mails as text. A heading that starts with {@code >} sets its column to the right. */
public final class TextTable {
    private final List<String> headings;
    private final List<List<String>> rows = new ArrayList<>();

    public TextTable(String... headings) {
        this.headings = List.of(headings);
    }

    /** Rows by the description of their columns. */
    public static <R> TextTable of(List<TableColumn<R>> columns, List<R> rows) {
        TextTable table = new TextTable(columns.stream()
                .map(column -> (column.isFigure() ? ">" : "")
                        + column.heading()
                        + (column.unit().sign().isEmpty()
                                ? ""
                                : " " + column.unit().sign()))
                .toArray(String[]::new));
        rows.forEach(row ->
                table.row(columns.stream().map(column -> column.plain(row)).toArray()));
        return table;
    }

    public TextTable row(Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(String.valueOf(cell));
        }
        rows.add(row);
        return this;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    public void print(PrintWriter out) {
        int[] widths = new int[headings.size()];
        for (int c = 0; c < widths.length; c++) {
            int column = c;
            widths[c] = Math.max(
                    title(c).length(),
                    rows.stream()
                            .mapToInt(row -> row.get(column).length())
                            .max()
                            .orElse(0));
        }
        List<String> titles = new ArrayList<>();
        for (int c = 0; c < widths.length; c++) {
            titles.add(title(c));
        }
        out.println(line(titles, widths));
        rows.forEach(row -> out.println(line(row, widths)));
    }

    private String title(int column) {
        return toRight(column) ? headings.get(column).substring(1) : headings.get(column);
    }

    private boolean toRight(int column) {
        return headings.get(column).startsWith(">");
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder(" ");
        for (int c = 0; c < widths.length; c++) {
            String pad = " ".repeat(widths[c] - cells.get(c).length());
            line.append(' ')
                    .append(toRight(c) ? pad + cells.get(c) : cells.get(c) + pad)
                    .append(' ');
        }
        return line.toString().stripTrailing();
    }
}
