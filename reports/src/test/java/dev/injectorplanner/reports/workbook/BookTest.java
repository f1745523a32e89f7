package dev.injectorplanner.reports.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.plan.Assumption;
import dev.injectorplanner.reports.testkit.Golden;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class BookTest {
    private static XSSFWorkbook book(Consumer<Book> filling) {
        return Golden.open(out -> {
            try (Book book = new Book("A title")) {
                filling.accept(book);
                book.write(out);
            }
        });
    }

    private static final List<SheetColumn> COLUMNS = List.of(
            SheetColumn.of("Name", Format.TEXT, 12),
            SheetColumn.summed("Pieces", Format.QUANTITY, 10),
            SheetColumn.of("Day", Format.DATE, 12),
            SheetColumn.summed("Twice", Format.TWO_DECIMALS, 10),
            SheetColumn.of("Words", Format.WRAPPED, 10));

    private static XSSFSheet table() {
        return book(book -> book.table("Tab", "Title", "Remark", COLUMNS)
                        .row("a", 2, LocalDate.of(2026, 3, 2), new Formula("B#*2", 4), "one two three four")
                        .row("b", new BigDecimal("3.5"), null, new Formula("B#*2", 7), "")
                        .finish())
                .getSheet("Tab");
    }

    @Test
    void textThatBeginsLikeAFormulaStaysText() {
        List<String> texts = List.of("=1+1", "+1", "-1", "@a", "\tx", "plain", "");
        XSSFWorkbook book = book(filled -> {
            TableSheet sheet = filled.table("T", "=title", "+remark", List.of(SheetColumn.of("A", Format.TEXT, 9)));
            texts.forEach(sheet::row);
            sheet.finish();
        });
        for (int i = 0; i < texts.size(); i++) {
            Cell cell = book.getSheet("T").getRow(4 + i).getCell(0);
            assertThat(cell.getCellType()).as(texts.get(i)).isEqualTo(CellType.STRING);
            assertThat(cell.getStringCellValue()).isEqualTo(texts.get(i));
            assertThat(cell.getCellStyle().getQuotePrefixed())
                    .as(texts.get(i))
                    .isEqualTo(!texts.get(i).isEmpty()
                            && "=+-@\t".indexOf(texts.get(i).charAt(0)) >= 0);
        }
        assertThat(book.getSheet("T").getRow(0).getCell(0).getCellType()).isEqualTo(CellType.STRING);
    }

    @Test
    void aTextLongerThanACellTakesIsCutAndSaysSo() {
        XSSFWorkbook book = book(filled -> filled.table("T", "t", "r", List.of(SheetColumn.of("A", Format.TEXT, 9)))
                .row("x".repeat(40_000))
                .finish());
        String text = book.getSheet("T").getRow(4).getCell(0).getStringCellValue();
        assertThat(text).hasSize(32_003).endsWith("x...");
    }

    @Test
    void realDatesNumbersAndFormulasWithTheirValues() {
        XSSFSheet sheet = table();
        Cell day = sheet.getRow(4).getCell(2);
        assertThat(day.getLocalDateTimeCellValue().toLocalDate()).isEqualTo(LocalDate.of(2026, 3, 2));
        assertThat(DateUtil.isCellDateFormatted(day)).isTrue();
        assertThat(day.getCellStyle().getDataFormatString()).isEqualTo("d mmm yyyy");
        assertThat(sheet.getRow(5).getCell(1).getNumericCellValue()).isEqualTo(3.5);
        assertThat(sheet.getRow(5).getCell(2).getCellType()).isEqualTo(CellType.BLANK);
        assertThat(sheet.getRow(5).getCell(3).getCellFormula()).isEqualTo("B6*2");
        assertThat(sheet.getRow(5).getCell(3).getNumericCellValue()).isEqualTo(7);
    }

    @Test
    void totalsFollowTheFilter() {
        XSSFSheet sheet = table();
        assertThat(sheet.getRow(2).getCell(0).getStringCellValue()).isEqualTo("Total of the rows shown");
        assertThat(sheet.getRow(2).getCell(1).getCellFormula()).isEqualTo("SUBTOTAL(109,B5:B6)");
        assertThat(sheet.getRow(2).getCell(1).getNumericCellValue()).isEqualTo(5.5);
        assertThat(sheet.getRow(2).getCell(3).getNumericCellValue()).isEqualTo(11);
        assertThat(sheet.getCTWorksheet().getAutoFilter().getRef()).isEqualTo("A4:E6");
    }

    @Test
    void theHeadStaysInSightAndOnEveryPage() {
        XSSFSheet sheet = table();
        assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
        assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 4);
        assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("4:4");
    }

    @Test
    void printedOnePageWide() {
        XSSFSheet sheet = table();
        assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);
        assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
        assertThat(sheet.getFitToPage()).isTrue();
        assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
        assertThat(sheet.getPrintSetup().getFitHeight()).isZero();
        assertThat(sheet.getFooter().getRight()).isEqualTo("page &P of &N");
    }

    @Test
    void wrappedTextGetsTheLinesItNeeds() {
        assertThat(Cells.lines("one two three four", Format.WRAPPED, 10)).isEqualTo(2);
        assertThat(Cells.lines("one two three four", Format.TEXT, 10)).isEqualTo(1);
        assertThat(Cells.lines(null, Format.WRAPPED, 10)).isEqualTo(1);
        assertThat(table().getRow(4).getHeightInPoints()).isEqualTo(Cells.points(2));
    }

    @Test
    void aRowOfTheWrongLengthIsAFaultOfTheProgram() {
        try (Book book = new Book("t")) {
            TableSheet sheet = book.table("T", "t", "r", COLUMNS);
            assertThatThrownBy(() -> sheet.row("a"))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("1 values for 5 columns");
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void anEmptyTableIsATableAllTheSame() {
        XSSFSheet sheet = book(book ->
                        book.table("T", "t", "r", COLUMNS).finish().chart(new BarChart("c", "v", 0, List.of(1))))
                .getSheet("T");
        assertThat(sheet.getRow(2).getCell(1).getCellFormula()).isEqualTo("SUBTOTAL(109,B5:B5)");
        assertThat(sheet.getRow(2).getCell(1).getNumericCellValue()).isZero();
        assertThat(sheet.getDrawingPatriarch()).isNull();
    }

    @Test
    void tabsAreUniqueAndAllowed() {
        XSSFWorkbook book = book(filled -> {
            filled.page("T/1", "a", "r");
            filled.page("T/1", "b", "r");
            filled.page("x".repeat(40), "c", "r");
            filled.page("x".repeat(40), "d", "r");
        });
        assertThat(book.getSheetName(0)).isEqualTo("T 1");
        assertThat(book.getSheetName(1)).isEqualTo("T 1 2");
        assertThat(book.getSheetName(3)).hasSizeLessThanOrEqualTo(31).endsWith(" 2");
    }

    @Test
    void aPageIsReadFromTopToBottom() {
        XSSFSheet sheet = book(filled -> filled.page("P", "Title", "Remark")
                        .section("A", "Parts")
                        .text("a line over the whole width")
                        .heads(List.of("One", "Two"), List.of(Format.TEXT, Format.ONE_DECIMAL))
                        .row(List.of(Format.TEXT, Format.ONE_DECIMAL), "=x", 2.5)
                        .row(List.of(Format.TEXT, Format.ONE_DECIMAL), "box", null))
                .getSheet("P");
        assertThat(sheet.getRow(3).getCell(0).getStringCellValue()).isEqualTo("A   Parts");
        assertThat(sheet.getMergedRegions()).hasSize(1);
        assertThat(sheet.getRow(6).getCell(0).getStringCellValue()).isEqualTo("=x");
        assertThat(sheet.getRow(6).getCell(1).getNumericCellValue()).isEqualTo(2.5);
        assertThat(sheet.getRow(7).getCell(1).getCellType()).isEqualTo(CellType.BLANK);
        assertThat(sheet.getPrintSetup().getLandscape()).isFalse();
    }

    @Test
    void theBookCalculatesWhenOpenedAndSaysWhatItIs() {
        XSSFWorkbook book =
                book(filled -> filled.assumptions(List.of(new Assumption("weeks", "26", "site")), "remark"));
        assertThat(book.getForceFormulaRecalculation()).isTrue();
        assertThat(book.getProperties().getCoreProperties().getTitle()).isEqualTo("A title");
        assertThat(book.getSheet("Assumptions").getRow(4).getCell(1).getStringCellValue())
                .isEqualTo("26");
    }
}
