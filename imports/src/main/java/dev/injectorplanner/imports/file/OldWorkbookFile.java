package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.cell.CellText;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/** A workbook of the kind before 2007 (XLS). It is held in memory: no sheet of it has more than 65,536 rows. */
final class OldWorkbookFile implements RawFile {
    private final List<RawSheet> sheets;

    private OldWorkbookFile(List<RawSheet> sheets) {
        this.sheets = sheets;
    }

    static OldWorkbookFile open(Path file) {
        try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true);
                HSSFWorkbook book = new HSSFWorkbook(container)) {
            List<RawSheet> sheets = new ArrayList<>();
            for (int i = 0; i < book.getNumberOfSheets(); i++) {
                Sheet sheet = book.getSheetAt(i);
                boolean hidden = book.isSheetHidden(i) || book.isSheetVeryHidden(i);
                List<String> remarks = sheet.getNumMergedRegions() == 0
                        ? List.of()
                        : List.of("merged areas (" + sheet.getNumMergedRegions()
                                + "): only the first cell of each holds its value; the others are empty");
                sheets.add(new RowsInMemory(book.getSheetName(i), hidden, rows(sheet), remarks));
            }
            return new OldWorkbookFile(sheets);
        } catch (org.apache.poi.EncryptedDocumentException e) {
            throw new FileRefusedException(
                    file, "is protected by a password", "open it, save a copy without the password, load that", e);
        } catch (IOException | RuntimeException e) {
            throw new FileRefusedException(
                    file,
                    "is a damaged workbook of the old .xls kind, or another old office document",
                    "save the table as CSV (UTF-8) or XLSX and load that",
                    e);
        }
    }

    private static List<String[]> rows(Sheet sheet) {
        List<String[]> rows = new ArrayList<>();
        for (int at = 0; at <= sheet.getLastRowNum(); at++) {
            Row row = sheet.getRow(at);
            String[] cells = new String[row == null ? 0 : Math.max(0, row.getLastCellNum())];
            Arrays.fill(cells, "");
            if (row != null) {
                row.forEach(cell -> cells[cell.getColumnIndex()] = text(cell));
            }
            rows.add(cells);
        }
        return rows;
    }

    private static String text(Cell cell) {
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return switch (type) {
            case STRING -> CellText.unescaped(cell.getStringCellValue());
            case BOOLEAN -> cell.getBooleanCellValue() ? "yes" : "no";
            case ERROR -> FormulaError.forInt(cell.getErrorCellValue()).getString();
            case NUMERIC -> number(cell);
            default -> "";
        };
    }

    private static String number(Cell cell) {
        double value = cell.getNumericCellValue();
        if (DateUtil.isCellDateFormatted(cell)) {
            return SheetRows.date(value, false);
        }
        return cell.getCellStyle().getDataFormatString().endsWith("%")
                ? SheetRows.percent(value)
                : SheetRows.plain(value);
    }

    @Override
    public List<RawSheet> sheets() {
        return sheets;
    }

    @Override
    public void close() {
        // everything is in memory
    }
}
