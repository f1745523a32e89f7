package dev.injectorplanner.reports.table;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** One description of a column, read as a sheet and as text. */
class TableColumnTest {
    private record Draw(String depot, LocalDate day, double litres, int cans, double price) {}

    private static final TableColumn<Draw> DEPOT = TableColumn.text("Depot", 12, Draw::depot);
    private static final TableColumn<Draw> DAY = TableColumn.date("Day", 12, Draw::day);
    private static final TableColumn<Draw> LITRES =
            TableColumn.<Draw>figure("Drained", Unit.LITRES, 9, Draw::litres).summed();
    private static final TableColumn<Draw> CANS = TableColumn.count("Cans", 6, Draw::cans);
    private static final List<Draw> ROWS = List.of(
            new Draw("North", LocalDate.of(2026, 3, 2), 1204.25, 3, 2.5),
            new Draw("East", LocalDate.of(2026, 3, 9), 0.96, 12, 1));

    @Test
    void as_text_with_its_unit_and_figures_at_the_right() {
        StringWriter text = new StringWriter();
        TextTable.of(List.of(DEPOT, DAY, LITRES, CANS), ROWS).print(new PrintWriter(text));
        assertThat(text.toString().lines())
                .containsExactly(
                        "  Depot  Day         Drained l  Cans",
                        "  North  2026-03-02     1204.3     3",
                        "  East   2026-03-09        1.0    12");
    }

    @Test
    void as_a_sheet_with_values_formats_and_a_total() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Book book = new Book("Draws")) {
            SheetTable.add(
                    book,
                    "Draws",
                    "Draws",
                    "made up",
                    List.of(DEPOT, DAY, LITRES, CANS.valued(row -> new Formula("C#*2", row.litres() * 2))),
                    ROWS);
            book.write(out);
        }
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            XSSFSheet sheet = read.getSheet("Draws");
            assertThat(sheet.getRow(3).getCell(2).getStringCellValue()).isEqualTo("Drained, l");
            assertThat(sheet.getRow(4).getCell(1).getLocalDateTimeCellValue().toLocalDate())
                    .isEqualTo(LocalDate.of(2026, 3, 2));
            assertThat(sheet.getRow(5).getCell(2).getNumericCellValue()).isEqualTo(0.96);
            assertThat(sheet.getRow(5).getCell(3).getCellFormula()).isEqualTo("C6*2");
            assertThat(sheet.getRow(2).getCell(2).getCellFormula()).isEqualTo("SUBTOTAL(109,C5:C6)");
        }
    }

    @Test
    void other_headings_values_and_formats_of_the_same_column() {
        assertThat(LITRES.headed("Hours").headingWithUnit()).isEqualTo("Hours");
        assertThat(LITRES.written(Format.TWO_DECIMALS).plain(ROWS.get(0))).isEqualTo("1204.25");
        assertThat(CANS.valued(row -> null).plain(ROWS.get(0))).isEmpty();
        assertThat(CANS.valued(row -> new Formula("A#", 7)).plain(ROWS.get(0))).isEqualTo("7");
        assertThat(TableColumn.<Draw>figure("Price", Unit.NONE, 9, Draw::price)
                        .written(Format.QUANTITY)
                        .plain(ROWS.get(0)))
                .isEqualTo("2.5");
    }
}
