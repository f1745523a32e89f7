package dev.injectorplanner.app.mail;

import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.TextTable;
import dev.injectorplanner.reports.table.Unit;
import java.io.PrintWriter;
import java.io.StringWriter;
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
    private final SiteForm form;
    private final StringBuilder text = new StringBuilder();
    private final StringBuilder html = new StringBuilder();

    /** In km and litres. */
    public Letter(String title) {
        this(title, SiteForm.STANDARD);
    }

    /**
     * In a site's form: sentences, cells and headings are turned as they are said.
     *
     * @param engine what it is; the subject of the mail as well
     */
    public Letter(String engine, SiteForm form) {
        this.form = form;
        this.title = form.sentence(engine);
        text.append(title).append("\n\n");
        html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>")
                .append(escaped(title))
                .append("</title><style>")
                .append(STYLE)
                .append("</style></head><body>\n<h1>")
                .append(escaped(title))
                .append("</h1>\n");
    }

    public Letter say(String engine) {
        String sentence = form.sentence(engine);
        text.append(sentence).append("\n\n");
        html.append("<p>").append(escaped(sentence)).append("</p>\n");
        return this;
    }

    /** A table under its heading, by the description of its columns; nothing where it has no rows. */
    public <R> Letter table(String heading, List<TableColumn<R>> columns, List<R> rows) {
        return tableOf(
                heading,
                columns.stream().map(this::heading).toList(),
                rows.stream()
                        .map(row -> columns.stream()
                                .map(column -> cell(column, row))
                                .toList())
                        .toList());
    }

    private String heading(TableColumn<?> column) {
        return switch (column.unit()) {
            case MONEY -> form.money(column.heading());
            case LITRES -> column.heading() + ", " + form.units().volumeUnit();
            case NONE, HOURS, PERCENT, CELSIUS -> column.headingWithUnit();
        };
    }

    private <R> String cell(TableColumn<R> column, R row) {
        boolean volume = column.unit() == Unit.LITRES && form.units().volume() != SiteUnits.Volume.LITRES;
        return volume && column.value().apply(row) instanceof Number litres
                ? form.units().volumeFigure(litres.doubleValue())
                : column.plain(row);
    }

    /** A table under its heading; nothing where it has no rows. */
    public Letter tableOf(String heading, List<String> columns, List<List<String>> engine) {
        List<List<String>> rows = engine.stream()
                .map(row -> row.stream().map(form::sentence).toList())
                .toList();
        if (rows.isEmpty()) {
            return this;
        }
        StringWriter lines = new StringWriter();
        TextTable table = new TextTable(columns.toArray(String[]::new));
        rows.forEach(row -> table.row(row.toArray()));
        table.print(new PrintWriter(lines));
        text.append(heading).append('\n').append(lines.toString().replace(System.lineSeparator(), "\n"));
        html.append("<h2>").append(escaped(heading)).append("</h2>\n<table><thead>");
        htmlRow(columns, "th");
        html.append("</thead><tbody>");
        rows.forEach(row -> htmlRow(row, "td"));
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
