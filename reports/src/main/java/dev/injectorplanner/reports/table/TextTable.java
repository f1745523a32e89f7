package dev.injectorplanner.reports.table;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Lines in columns for the terminal, as wide as that is, and for mails as text. A heading that starts with {@code >} sets its column to the right. */
public final class TextTable {
    private static final int LEAST = 12;

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
        if (out instanceof TerminalOut terminal) {
            fit(widths, terminal.columns());
        }
        List<String> titles = new ArrayList<>();
        for (int c = 0; c < widths.length; c++) {
            titles.add(title(c));
        }
        out.println(line(titles, widths));
        rows.forEach(row -> out.println(line(row, widths)));
    }

    /** Takes what is too much for a line from the widest columns of words; figures stay whole. */
    private void fit(int[] widths, int columns) {
        int tooMuch = 1 + 2 * widths.length - columns;
        for (int width : widths) {
            tooMuch += width;
        }
        while (tooMuch > 0) {
            int widest = -1;
            for (int c = 0; c < widths.length; c++) {
                boolean words = !toRight(c) && widths[c] > Math.max(LEAST, title(c).length());
                if (words && (widest < 0 || widths[c] > widths[widest])) {
                    widest = c;
                }
            }
            if (widest < 0) {
                return;
            }
            widths[widest]--;
            tooMuch--;
        }
    }

    private static String cut(String cell, int width) {
        return cell.length() <= width ? cell : cell.substring(0, width - 1) + "\u2026";
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
            String cell = cut(cells.get(c), widths[c]);
            String pad = " ".repeat(widths[c] - cell.length());
            line.append(' ').append(toRight(c) ? pad + cell : cell + pad).append(' ');
        }
        return line.toString().stripTrailing();
    }
}
