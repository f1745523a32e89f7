package dev.injectorplanner.reports.order;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteForm.PaperSize;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** An order as its supplier gets it. By hand: 8 x 480 + 20 x 2.15 = 3,883.00; deposits 8 x 120 = 960.00; together 4,843.00. */
class OrderPaperTest {
    private static final OrderPaper ORDER = new OrderPaper(
            "PO-00012",
            "Seal & Injector House",
            List.of("Dock Road 5", "Harbour Town"),
            "C-881",
            "North Haulage",
            LocalDate.of(2026, 3, 2),
            "Kim Ozols",
            "Please send the seals with the injectors.",
            List.of(
                    new OrderPaper.Line(
                            "KV-8140",
                            "injector, V8",
                            "North",
                            8,
                            new BigDecimal("480"),
                            new BigDecimal("120"),
                            LocalDate.of(2026, 3, 16)),
                    new OrderPaper.Line(
                            "KX-1001",
                            "seal <kit>",
                            "South",
                            20,
                            new BigDecimal("2.15"),
                            BigDecimal.ZERO,
                            LocalDate.of(2026, 3, 9))));

    private static final OrderPaper.Style STYLE = new OrderPaper.Style() {
        @Override
        public String money(BigDecimal amount) {
            return String.format(Locale.ROOT, "%,.2f", amount);
        }

        @Override
        public String pieces(double quantity) {
            return String.valueOf((long) quantity);
        }

        @Override
        public String day(LocalDate day) {
            return day.toString();
        }
    };

    private static PDDocument pdf(PaperSize size) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ORDER.document(STYLE, inEuro(size)).write(size, out);
        return Loader.loadPDF(out.toByteArray());
    }

    private static SiteForm inEuro(PaperSize size) {
        SiteForm usual = SiteForm.STANDARD;
        return new SiteForm(usual.units(), "EUR", usual.dates(), size);
    }

    @Test
    void theDocumentSaysWhatIsOrderedAndAddsUp() throws Exception {
        try (PDDocument document = pdf(PaperSize.A4)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Purchase order PO-00012", "Seal & Injector House", "Dock Road 5", "C-881", "Kim Ozols")
                    .contains("KV-8140", "seal <kit>", "3,840.00", "43.00", "2026-03-16")
                    .contains(
                            "Order value, EUR",
                            "3,883.00",
                            "960.00",
                            "4,843.00",
                            "Please send the seals with the injectors.");
        }
    }

    @Test
    void paperIsA4OrLetter() throws Exception {
        try (PDDocument a4 = pdf(PaperSize.A4);
                PDDocument letter = pdf(PaperSize.LETTER)) {
            assertThat(Math.round(a4.getPage(0).getMediaBox().getHeight())).isEqualTo(842);
            assertThat(Math.round(letter.getPage(0).getMediaBox().getHeight())).isEqualTo(792);
        }
    }

    @Test
    void theWorkbookCountsAgainWhenAQuantityIsChanged() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ORDER.workbook(SiteForm.STANDARD, out);
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            Sheet sheet = book.getSheet("PO-00012");
            assertThat(sheet.getRow(4).getCell(5).getNumericCellValue()).isEqualTo(3840);
            sheet.getRow(4).getCell(3).setCellValue(10);
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            assertThat(sheet.getRow(4).getCell(5).getNumericCellValue()).isEqualTo(4800);
            assertThat(sheet.getRow(4).getCell(7).getNumericCellValue()).isEqualTo(1200);
            assertThat(sheet.getRow(2).getCell(5).getNumericCellValue()).isEqualTo(4843);
        }
    }
}
