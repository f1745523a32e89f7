package dev.injectorplanner.reports.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteForm.DateForm;
import dev.injectorplanner.core.units.SiteForm.PaperSize;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.coolant.CoolantWorkbook;
import dev.injectorplanner.reports.parts.PartsWorkbook;
import dev.injectorplanner.reports.testkit.Golden;
import dev.injectorplanner.reports.testkit.SmallFleet;
import dev.injectorplanner.reports.testkit.SmallPlan;
import dev.injectorplanner.reports.work.UpcomingWorkbook;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Workbooks as a site in the United States reads them. 1 US gallon is 3.785411784 l (NIST SP 811, by definition). */
class SiteFormSheetsTest {
    private static final double LITRES_A_GALLON = 3.785411784;
    private static final SiteForm AMERICAN = new SiteForm(
            new SiteUnits(SiteUnits.Distance.MILES, SiteUnits.Volume.US_GALLONS, SiteUnits.Temperature.FAHRENHEIT),
            "USD",
            DateForm.MONTH_FIRST,
            PaperSize.LETTER);

    private static List<String> headings(XSSFWorkbook book) {
        List<String> all = new ArrayList<>();
        for (Sheet sheet : book) {
            Row head = sheet.getRow(3);
            if (head != null) {
                head.forEach(cell -> all.add(cell.getStringCellValue()));
            }
        }
        return all;
    }

    private static List<String> texts(XSSFWorkbook book) {
        List<String> all = new ArrayList<>();
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.STRING) {
                        all.add(cell.getStringCellValue());
                    }
                }
            }
        }
        return all;
    }

    @Test
    void everySheetIsOnTheSitesPaperWithItsDates() throws IOException {
        try (XSSFWorkbook book = Golden.open(
                out -> new UpcomingWorkbook(SmallFleet.snapshot(), SmallPlan.standard()).write(out, AMERICAN))) {
            for (Sheet sheet : book) {
                assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.LETTER_PAPERSIZE);
            }
            assertThat(texts(book)).noneMatch(text -> text.matches(".*\\d km\\b.*|.*\\b20\\d\\d-\\d\\d-\\d\\d\\b.*"));
            assertThat(headings(book)).noneMatch(title -> title.matches(".*, (l|km|C)"));
        }
    }

    @Test
    void moneyBearsTheCurrency() throws IOException {
        try (XSSFWorkbook book = Golden.open(
                out -> new PartsWorkbook(SmallFleet.snapshot(), SmallPlan.standard()).write(out, AMERICAN))) {
            assertThat(headings(book)).anyMatch(title -> title.endsWith(", USD"));
        }
    }

    /** The same workbook in litres and in gallons: each figure turned, and what a formula works out as well. */
    @Test
    void coolantInGallonsAddsUpAsInLitres() throws IOException {
        var plan = SmallPlan.with(FailureForecast.NONE, CoolantRules.standard().withProtectToC(-36.4));
        try (XSSFWorkbook litres = Golden.open(new CoolantWorkbook(plan)::write);
                XSSFWorkbook gallons = Golden.open(out -> new CoolantWorkbook(plan).write(out, AMERICAN))) {
            gallons.getCreationHelper().createFormulaEvaluator().evaluateAll();
            int turned = 0;
            for (Sheet sheet : litres) {
                XSSFSheet other = gallons.getSheet(sheet.getSheetName());
                Row head = sheet.getRow(3);
                for (Cell title : head) {
                    if (title.getStringCellValue().endsWith(", l")) {
                        assertThat(other.getRow(3)
                                        .getCell(title.getColumnIndex())
                                        .getStringCellValue())
                                .endsWith(", US gal");
                        turned += same(sheet, other, title.getColumnIndex());
                    }
                }
            }
            assertThat(turned).isGreaterThan(20);
        }
    }

    private static int same(Sheet litres, Sheet gallons, int column) {
        int compared = 0;
        for (int row = 4; row <= litres.getLastRowNum(); row++) {
            Cell cell = litres.getRow(row).getCell(column);
            if (cell != null && cell.getCellType() != CellType.BLANK && cell.getCellType() != CellType.STRING) {
                double there = gallons.getRow(row).getCell(column).getNumericCellValue();
                assertThat(there * LITRES_A_GALLON)
                        .as("%s, row %d", litres.getSheetName(), row + 1)
                        .isCloseTo(cell.getNumericCellValue(), within(0.001));
                compared++;
            }
        }
        return compared;
    }
}
