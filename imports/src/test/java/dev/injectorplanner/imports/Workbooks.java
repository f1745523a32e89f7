package dev.injectorplanner.imports;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Makes workbooks for the tests. */
final class Workbooks {
    private Workbooks() {}

    static Path write(Path file, Consumer<XSSFWorkbook> content) {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            content.accept(workbook);
            workbook.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    /** A row of texts, numbers, truth values, dates and date-times, each as a real cell of its kind. */
    static Row row(Sheet sheet, int at, Object... values) {
        Row row = sheet.createRow(at);
        for (int i = 0; i < values.length; i++) {
            Object value = values[i];
            if (value == null) {
                continue;
            }
            Cell cell = row.createCell(i);
            if (value instanceof Number number) {
                cell.setCellValue(number.doubleValue());
            } else if (value instanceof Boolean yes) {
                cell.setCellValue(yes);
            } else if (value instanceof LocalDate day) {
                cell.setCellValue(day);
                cell.setCellStyle(style(sheet, "dd.mm.yyyy"));
            } else if (value instanceof LocalDateTime moment) {
                cell.setCellValue(moment);
                cell.setCellStyle(style(sheet, "m/d/yy h:mm"));
            } else {
                cell.setCellValue(value.toString());
            }
        }
        return row;
    }

    static CellStyle style(Sheet sheet, String format) {
        CellStyle style = sheet.getWorkbook().createCellStyle();
        style.setDataFormat(sheet.getWorkbook().createDataFormat().getFormat(format));
        return style;
    }

    static void readings(XSSFWorkbook workbook) {
        Sheet sheet = workbook.createSheet("Readings");
        row(sheet, 0, "truck", "taken_at", "odometer_km");
        row(sheet, 1, "T1", LocalDateTime.of(2026, 4, 3, 8, 0), 120_500);
    }

    /** Changes the text of one part of a workbook. */
    static Path change(Path file, String part, UnaryOperator<String> change) {
        try (FileSystem zip = FileSystems.newFileSystem(file)) {
            Path inside = zip.getPath(part);
            Files.writeString(inside, change.apply(Files.readString(inside)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }
}
