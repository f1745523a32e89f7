package dev.injectorplanner.reports.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.testkit.Golden;
import java.io.File;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.util.TempFile;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** A table whose rows go to a temporary file is the same table as one that is kept in memory. */
class LongTablesTest {
    private static final int ROWS = 2_345;
    private static final List<SheetColumn> COLUMNS = List.of(
            SheetColumn.of("Truck", Format.TEXT, 12),
            SheetColumn.summed("Pieces", Format.QUANTITY, 10),
            SheetColumn.of("Day", Format.DATE, 12),
            SheetColumn.summed("Twice", Format.TWO_DECIMALS, 10),
            SheetColumn.of("Why", Format.WRAPPED, 10));

    /** A long table between two short ones, the first of them with a chart. */
    private static XSSFWorkbook book(int inMemory) {
        return Golden.open(out -> {
            try (Book book = new Book("Long", SiteForm.STANDARD, inMemory)) {
                rows(book.table("First", "First", "remark", COLUMNS), 5)
                        .finish()
                        .chart(new BarChart("c", "v", 0, List.of(1)));
                rows(book.table("Long", "Long", "remark", COLUMNS), ROWS)
                        .finish()
                        .printing(2);
                book.page("Page", "Page", "remark").text("a line");
                rows(book.table("Other", "Other", "remark", COLUMNS), ROWS / 2).finish();
                book.write(out);
            }
        });
    }

    private static TableSheet rows(TableSheet sheet, int rows) {
        for (int i = 0; i < rows; i++) {
            sheet.row(
                    i % 7 == 0 ? "=T&<" + i + ">\"" : " T" + i + " \u00e9\u20ac",
                    i % 5 == 0 ? null : i / 4.0,
                    LocalDate.of(2026, 3, 2).plusDays(i % 100),
                    new Formula("B#*2", i % 5 == 0 ? 0 : i / 2.0),
                    i % 3 == 0 ? "one two three four\nfive" : "");
        }
        return sheet;
    }

    @Test
    void everyCellRowAndSettingIsTheSame() throws IOException {
        try (XSSFWorkbook streamed = book(100);
                XSSFWorkbook whole = book(Integer.MAX_VALUE)) {
            assertThat(streamed.getNumberOfSheets()).isEqualTo(4);
            for (int i = 0; i < whole.getNumberOfSheets(); i++) {
                List<String> expected = described(whole.getSheetAt(i));
                List<String> found = described(streamed.getSheetAt(i));
                for (int line = 0; line < Math.min(expected.size(), found.size()); line++) {
                    assertThat(found.get(line)).isEqualTo(expected.get(line));
                }
                assertThat(found).hasSameSizeAs(expected);
            }
            assertThat(streamed.getSheet("Long").getLastRowNum()).isEqualTo(ROWS + 3);
            assertThat(Golden.recalculated(streamed)).isEqualTo(Golden.recalculated(whole));
            assertThat(streamed.getPrintArea(1)).isEqualTo(whole.getPrintArea(1));
            assertThat(streamed.getSheet("First").getDrawingPatriarch().getCharts())
                    .hasSize(1);
        }
    }

    @Test
    void nothingIsLeftInTheTemporaryFolder() throws IOException {
        List<File> before = temporary();
        book(100).close();
        assertThat(temporary()).isEqualTo(before);
    }

    private static List<File> temporary() throws IOException {
        File any = TempFile.createTempFile("any", ".tmp");
        try {
            File[] files = any.getParentFile().listFiles((folder, name) -> name.contains("sxssf"));
            return files == null ? List.of() : List.of(files);
        } finally {
            java.nio.file.Files.delete(any.toPath());
        }
    }

    private static List<String> described(XSSFSheet sheet) {
        List<String> lines = new ArrayList<>();
        lines.add(sheet.getSheetName() + " " + sheet.getCTWorksheet().getAutoFilter() + sheet.getDimension()
                + sheet.getRepeatingRows() + sheet.getPaneInformation());
        for (Row row : sheet) {
            lines.add(row.getRowNum() + " high " + row.getHeightInPoints());
            for (Cell cell : row) {
                CellStyle style = cell.getCellStyle();
                lines.add(cell.getAddress() + " " + cell.getCellType() + " " + cell + " " + value(cell) + " "
                        + style.getIndex() + " " + style.getDataFormatString() + " " + style.getQuotePrefixed());
            }
        }
        return lines;
    }

    private static String value(Cell cell) {
        return switch (cell.getCellType()) {
            case NUMERIC, FORMULA -> String.valueOf(cell.getNumericCellValue());
            default -> cell.getStringCellValue();
        };
    }
}
