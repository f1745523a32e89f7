package dev.injectorplanner.app.mail;

import java.util.ArrayList;
import java.util.List;

/**
 * What a mail says, once, for both its forms: the answer first, then tables. State is said in words; the HTML has no
 * colours but ink on paper and loads nothing.
 */
public final class Letter {
    private static final String STYLE = "body{font:15px system-ui,sans-serif;max-width:60em}"
            + "table{border-collapse:collapse;font-variant-numeric:tabular-nums}"
            + "th,td{text-align:left;vertical-align:top;padding:3px 14px 3px 0;border-bottom:1px solid}"
            + "h1{font-size:19px;border-top:3px solid;padding-top:8px}h2{font-size:16px}";

    private final String title;
    private final StringBuilder text = new StringBuilder();
    private final StringBuilder html = new StringBuilder();

    /** @param title what it is; the subject of the mail as well */
    public Letter(String title) {
        this.title = title;
        text.append(title).append("\n\n");
        html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>")
                .append(escaped(title))
                .append("</title><style>")
                .append(STYLE)
                .append("</style></head><body>\n<h1>")
                .append(escaped(title))
                .append("</h1>\n");
    }

    public Letter say(String sentence) {
        text.append(sentence).append("\n\n");
        html.append("<p>").append(escaped(sentence)).append("</p>\n");
        return this;
    }

    /** A table under its heading; nothing where it has no rows. */
    public Letter table(String heading, List<String> columns, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return this;
        }
        text.append(heading).append('\n');
        html.append("<h2>").append(escaped(heading)).append("</h2>\n<table><thead>");
        htmlRow(columns, "th");
        html.append("</thead><tbody>");
        int[] widths = widths(columns, rows);
        textRow(columns, widths);
        for (List<String> row : rows) {
            textRow(row, widths);
            htmlRow(row, "td");
        }
        html.append("</tbody></table>\n");
        text.append('\n');
        return this;
    }

    public String title() {
        return title;
    }

    public String text() {
        return text.toString();
    }

    public String html() {
        return html + "</body></html>\n";
    }

    private static int[] widths(List<String> columns, List<List<String>> rows) {
        int[] widths = columns.stream().mapToInt(String::length).toArray();
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        return widths;
    }

    private void textRow(List<String> cells, int[] widths) {
        List<String> padded = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            padded.add(cells.get(i) + " ".repeat(widths[i] - cells.get(i).length()));
        }
        text.append(("  " + String.join("  ", padded)).stripTrailing()).append('\n');
    }

    private void htmlRow(List<String> cells, String tag) {
        html.append("<tr>");
        cells.forEach(cell -> html.append('<')
                .append(tag)
                .append('>')
                .append(escaped(cell))
                .append("</")
                .append(tag)
                .append('>'));
        html.append("</tr>\n");
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
