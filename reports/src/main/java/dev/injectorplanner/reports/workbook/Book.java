package dev.injectorplanner.reports.workbook;

import dev.injectorplanner.core.plan.Assumption;
import dev.injectorplanner.core.units.SiteForm;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook in the making. */
public final class Book implements AutoCloseable {
    private static final String AUTHOR = "Injector Planner";

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final LongTables tables;
    private final SiteForm form;
    private final Styles styles;
    private final List<Runnable> charts = new ArrayList<>();

    /** In km, litres and degrees C, ISO dates, on A4. */
    public Book(String title) {
        this(title, SiteForm.STANDARD);
    }

    /**
     * In a site's form.
     *
     * @param title what the workbook is, in its properties
     */
    public Book(String title, SiteForm form) {
        this(title, form, LongTables.IN_MEMORY);
    }

    /** @param inMemory rows of a table that stay in memory */
    Book(String title, SiteForm form, int inMemory) {
        this.form = form;
        this.tables = new LongTables(workbook, inMemory);
        this.styles = new Styles(workbook, form);
        workbook.getProperties().getCoreProperties().setTitle(title);
        workbook.getProperties().getCoreProperties().setCreator(AUTHOR);
    }

    /** How the site wants it. */
    public SiteForm form() {
        return form;
    }

    /**
     * Adds a sheet with one table.
     *
     * @param name its tab
     * @param title the line at its top
     * @param remark the line below, such as the day and the weeks
     */
    public TableSheet table(String name, String title, String remark, List<SheetColumn> columns) {
        return new TableSheet(add(name), tables, styles, charts::add, title, remark, columns);
    }

    /** Adds a sheet that is read from top to bottom like a page. */
    public PageSheet page(String name, String title, String remark) {
        return new PageSheet(add(name), styles, title, remark);
    }

    /** Adds the sheet that says what the figures rest on. */
    public void assumptions(List<Assumption> assumptions, String remark) {
        TableSheet sheet = table(
                "Assumptions",
                "What the figures are based on",
                remark,
                List.of(
                        SheetColumn.of("About", Format.TEXT, 22),
                        SheetColumn.of("Assumption", Format.WRAPPED, 90),
                        SheetColumn.of("Whose", Format.WRAPPED, 34)));
        assumptions.forEach(each -> sheet.row(each.topic(), each.text(), each.source()));
        sheet.finish();
    }

    private XSSFSheet add(String name) {
        String safe = WorkbookUtil.createSafeSheetName(name);
        String unique = safe;
        for (int i = 2; workbook.getSheet(unique) != null; i++) {
            String end = " " + i;
            unique = safe.substring(0, Math.min(safe.length(), 31 - end.length())) + end;
        }
        return tables.add(unique);
    }

    /** Writes the workbook; it opens on its first sheet and calculates when opened. */
    public void write(OutputStream out) throws IOException {
        charts.forEach(Runnable::run); // a chart reads its cells, and those may look at a later sheet
        charts.clear();
        workbook.setActiveSheet(0);
        workbook.setForceFormulaRecalculation(true);
        tables.write(out);
    }

    @Override
    public void close() throws IOException {
        tables.close();
    }
}
