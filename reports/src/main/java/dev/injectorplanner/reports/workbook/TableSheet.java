package dev.injectorplanner.reports.workbook;

import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.jspecify.annotations.Nullable;

/**
 * A sheet with one table: title, remark, totals above the head where a long list cannot hide them, a head that stays in
 * sight, filters. Totals are formulas and follow the filter.
 */
public final class TableSheet {
    private static final int TITLE = 0;
    private static final int REMARK = 1;
    private static final int TOTALS = 2;
    private static final int HEAD = 3;

    private final XSSFSheet sheet;
    private final LongTables tables;
    private final Styles styles;
    private final Consumer<Runnable> whenWhole;
    private final Cells cells;
    private final List<SheetColumn> columns;
    private final List<SiteColumn> site;
    private final double[] sums;
    private Sheet body;
    private int next = HEAD + 1;

    /** @param whenWhole takes what must wait until every sheet of the workbook is there */
    TableSheet(
            XSSFSheet sheet,
            LongTables tables,
            Styles styles,
            Consumer<Runnable> whenWhole,
            String title,
            String remark,
            List<SheetColumn> columns) {
        this.sheet = sheet;
        this.body = sheet;
        this.tables = tables;
        this.styles = styles;
        this.whenWhole = whenWhole;
        this.cells = new Cells(styles);
        this.columns = List.copyOf(columns);
        this.site = columns.stream()
                .map(column -> SiteColumn.of(column.title(), column.format(), styles.form()))
                .toList();
        this.sums = new double[columns.size()];
        cells.put(sheet.createRow(TITLE), 0, title, styles.title());
        cells.put(sheet.createRow(REMARK), 0, styles.form().sentence(remark), styles.remark());
        Row head = sheet.createRow(HEAD);
        int lines = 1;
        for (int c = 0; c < columns.size(); c++) {
            SheetColumn column = columns.get(c);
            lines = Math.max(lines, Cells.lines(site.get(c).title(), Format.WRAPPED, column.width() - 2));
            cells.put(head, c, site.get(c).title(), styles.headOf(column.format()));
            sheet.setColumnWidth(c, column.width() * 256);
        }
        head.setHeightInPoints(Cells.points(lines));
    }

    /** Adds a row; a value for each column, null for an empty cell. */
    public TableSheet row(@Nullable Object... values) {
        if (values.length != columns.size()) {
            throw new IllegalArgumentException(values.length + " values for " + columns.size() + " columns");
        }
        if (next - HEAD - 1 == tables.inMemory()) {
            body = tables.streamed(sheet);
        }
        Row row = body.createRow(next++);
        int lines = 1;
        for (int c = 0; c < values.length; c++) {
            Object value = site.get(c).value(values[c]);
            lines = Math.max(
                    lines,
                    Cells.lines(value, columns.get(c).format(), columns.get(c).width()));
            cells.put(row, c, value, styles.cellOf(columns.get(c).format()));
            if (columns.get(c).total()) {
                sums[c] += value instanceof Formula formula
                        ? formula.value()
                        : value instanceof Number number ? number.doubleValue() : 0;
            }
        }
        row.setHeightInPoints(Cells.points(lines));
        return this;
    }

    /** Number of the first row of the table's body, as formulas count, from 1. */
    public static int firstRow() {
        return HEAD + 2;
    }

    /** Puts totals, filter and print shared access on. To be called once, after the last row. */
    public TableSheet finish() {
        int last = Math.max(next - 1, HEAD + 1);
        totals(last);
        if (body != sheet) {
            sheet.setDimensionOverride(new CellRangeAddress(TITLE, last, 0, columns.size() - 1));
        }
        sheet.setAutoFilter(new CellRangeAddress(HEAD, last, 0, columns.size() - 1));
        sheet.createFreezePane(0, HEAD + 1);
        sheet.setRepeatingRows(CellRangeAddress.valueOf((HEAD + 1) + ":" + (HEAD + 1)));
        Paper.setUp(sheet, true, styles.form().paper());
        return this;
    }

    private void totals(int last) {
        if (columns.stream().noneMatch(SheetColumn::total)) {
            return;
        }
        Row row = sheet.createRow(TOTALS);
        for (int c = 0; c < columns.size(); c++) {
            SheetColumn column = columns.get(c);
            if (column.total()) {
                String letter = CellReference.convertNumToColString(c);
                Formula sum =
                        new Formula("SUBTOTAL(109," + letter + (HEAD + 2) + ":" + letter + (last + 1) + ")", sums[c]);
                cells.put(row, c, sum, styles.totalOf(column.format()));
            } else if (c == 0) {
                cells.put(row, c, "Total of the rows shown", styles.totalOf(Format.TEXT));
            } else {
                cells.put(row, c, null, styles.totalOf(Format.TEXT));
            }
        }
    }

    /**
     * A cell above the head in which one of a list is chosen, for tables without totals; formulas find it at
     * {@code $B$3}.
     *
     * @param label what is chosen
     * @param from the list, as a formula such as {@code 'Shelves'!$A$5:$A$9}
     * @param chosen what is chosen at first
     */
    public TableSheet choice(String label, String from, String chosen) {
        Row row = sheet.createRow(TOTALS);
        cells.put(row, 0, label, styles.totalOf(Format.TEXT));
        cells.put(row, 1, chosen, styles.totalOf(Format.TEXT));
        var helper = sheet.getDataValidationHelper();
        var list = helper.createValidation(
                helper.createFormulaListConstraint(from), new CellRangeAddressList(TOTALS, TOTALS, 1, 1));
        list.setShowErrorBox(true);
        sheet.addValidationData(list);
        return this;
    }

    /** Prints the first columns only; the others are for the screen. */
    public TableSheet printing(int firstColumns) {
        var workbook = sheet.getWorkbook();
        workbook.setPrintArea(workbook.getSheetIndex(sheet), 0, firstColumns - 1, 0, Math.max(next - 1, HEAD + 1));
        return this;
    }

    /** A chart of the body's rows beside the table. */
    public void chart(BarChart chart) {
        if (next > HEAD + 1) {
            whenWhole.accept(() -> chart.in(styles.form().units()).draw(sheet, HEAD, next - 1, columns.size() + 1));
        }
    }
}
