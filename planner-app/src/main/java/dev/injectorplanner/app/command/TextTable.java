package dev.injectorplanner.app.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Lines in columns for the terminal. A heading that starts with {@code >} sets its column to the right. */
final class TextTable {
    private final List<String> headings;
    private final List<List<String>> rows = new ArrayList<>();

    TextTable(String... headings) {
        this.headings = List.of(headings);
    }

    TextTable row(Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(String.valueOf(cell));
        }
        rows.add(row);
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    void print(PrintWriter out) {
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
