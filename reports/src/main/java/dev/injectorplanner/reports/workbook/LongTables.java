package dev.injectorplanner.reports.workbook;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a workbook's memory bounded: the first rows of each table stay in memory, where totals above them and charts beside them can
 * be added at any time; the rows after those go to a temporary file as they come and are put behind the first ones when the workbook
 * is written. A workbook of short tables never makes such a file.
 */
final class LongTables implements Closeable {
    /** Rows of a table that stay in memory; no chart shows more. */
    static final int IN_MEMORY = 1_000;

    private static final int WINDOW = 16;

    private final XSSFWorkbook workbook;
    private final int inMemory;
    private @Nullable SXSSFWorkbook streamed;

    LongTables(XSSFWorkbook workbook, int inMemory) {
        this.workbook = workbook;
        this.inMemory = inMemory;
    }

    /** Rows of a table that stay in memory. */
    int inMemory() {
        return inMemory;
    }

    /** Adds a sheet. */
    XSSFSheet add(String name) {
        if (streamed == null) {
            return workbook.createSheet(name);
        }
        streamed.createSheet(name);
        return workbook.getSheet(name);
    }

    /** Where rows of a sheet go that do not stay in memory. */
    Sheet streamed(XSSFSheet sheet) {
        if (streamed == null) {
            streamed = new SXSSFWorkbook(workbook, WINDOW);
            streamed.setShouldCalculateSheetDimensions(false); // it would know the streamed rows only
        }
        return streamed.getSheet(sheet.getSheetName());
    }

    void write(OutputStream out) throws IOException {
        if (streamed == null) {
            workbook.write(out);
        } else {
            streamed.write(out);
        }
    }

    /** Closes the workbook and drops its temporary files. */
    @Override
    public void close() throws IOException {
        if (streamed == null) {
            workbook.close();
        } else {
            streamed.close();
        }
    }
}
