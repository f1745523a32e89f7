package dev.injectorplanner.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.jspecify.annotations.Nullable;

/** A sheet that is read from top to bottom: sections with small tables, lines of text, boxes to write in. */
public final class PageSheet {
    private static final int COLUMNS = 6;
    private static final int[] WIDTHS = {14, 30, 16, 18, 22, 18};
    private static final int CHARACTERS_ACROSS = 120;

    private final XSSFSheet sheet;
    private final Styles styles;
    private final Cells cells;
    private List<SiteColumn> site = List.of();
    private int next;

    PageSheet(XSSFSheet sheet, Styles styles, String title, String remark) {
        this.sheet = sheet;
        this.styles = styles;
        this.cells = new Cells(styles);
        for (int c = 0; c < COLUMNS; c++) {
            sheet.setColumnWidth(c, WIDTHS[c] * 256);
        }
        cells.put(sheet.createRow(next++), 0, title, styles.title());
        cells.put(sheet.createRow(next++), 0, styles.form().sentence(remark), styles.remark());
        Paper.setUp(sheet, false, styles.form().paper());
    }

    /** A heading with its letter, so that two people on the telephone find the same place. */
    public PageSheet section(String letter, String heading) {
        site = List.of();
        next++;
        Row row = sheet.createRow(next++);
        for (int c = 0; c < COLUMNS; c++) {
            cells.put(row, c, c == 0 ? letter + "   " + heading : null, styles.section());
        }
        return this;
    }

    /** A line of text over the whole width, as high as it needs. */
    public PageSheet text(String engine) {
        String text = styles.form().sentence(engine);
        Row row = sheet.createRow(next);
        cells.put(row, 0, text, styles.cellOf(Format.WRAPPED));
        for (int c = 1; c < COLUMNS; c++) {
            cells.put(row, c, null, styles.cellOf(Format.WRAPPED));
        }
        sheet.addMergedRegion(new CellRangeAddress(next, next, 0, COLUMNS - 1));
        row.setHeightInPoints(Cells.points(Cells.lines(text, Format.WRAPPED, CHARACTERS_ACROSS)));
        next++;
        return this;
    }

    /** Headings of a small table, at most six. */
    public PageSheet heads(List<String> engine, List<Format> formats) {
        site = new ArrayList<>();
        for (int c = 0; c < engine.size(); c++) {
            site.add(SiteColumn.of(engine.get(c), formats.get(c), styles.form()));
        }
        List<String> heads = site.stream().map(SiteColumn::title).toList();
        Row row = sheet.createRow(next++);
        for (int c = 0; c < heads.size(); c++) {
            cells.put(row, c, heads.get(c), styles.headOf(formats.get(c)));
        }
        for (int c = heads.size(); c < COLUMNS; c++) {
            cells.put(row, c, null, styles.headOf(Format.TEXT));
        }
        return this;
    }

    /** A row of a small table; null for a box to write in. */
    public PageSheet row(List<Format> formats, @Nullable Object... values) {
        Row row = sheet.createRow(next++);
        int lines = 1;
        for (int c = 0; c < values.length; c++) {
            Object value = c < site.size() ? site.get(c).value(values[c]) : values[c];
            cells.put(row, c, value, styles.cellOf(formats.get(c)));
            lines = Math.max(lines, Cells.lines(value, formats.get(c), WIDTHS[c]));
        }
        rule(row, values.length);
        row.setHeightInPoints(Cells.points(lines));
        return this;
    }

    /** The rule under a row goes on to the right edge. */
    private void rule(Row row, int from) {
        for (int c = from; c < COLUMNS; c++) {
            cells.put(row, c, null, styles.cellOf(Format.TEXT));
        }
    }
}
