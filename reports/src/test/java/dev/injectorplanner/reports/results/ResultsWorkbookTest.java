package dev.injectorplanner.reports.results;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.units.SiteForm;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;

/** The workbook holds what the page shows: months with a live total, prices of rules, forecasts with their counts. */
class ResultsWorkbookTest {
    private static final ResultsLine FEBRUARY = new ResultsLine(
            LocalDate.of(2026, 2, 1), null, 0, 6, 3, null, 0, 21, 94, 120, 0, 0, 2_730, 1_421, 11_600, 369_000, 42.68);
    private static final ResultsLine MARCH = new ResultsLine(
            LocalDate.of(2026, 3, 1), 7, 4, 5, 1, 33.5, 20, 2, 0, 0, 0, 0, 1_000, 500, 3_000, 100_000, 45.0);

    private static Workbook book() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new ResultsWorkbook(
                        List.of(FEBRUARY, MARCH),
                        List.of(new RuleLine("the limit of 310,000 km", 21_400, 52, 40, 300, 260)),
                        List.of(new ForecastLine(0.01, 0.02, 400, 6.1, 7, 0.008, 0.03, true)),
                        "of all depots",
                        "prices",
                        "400 forecasts")
                .write(out, SiteForm.STANDARD);
        return WorkbookFactory.create(new ByteArrayInputStream(out.toByteArray()));
    }

    private static Row rowOf(Sheet sheet, String text) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.toString().equals(text)) {
                    return row;
                }
            }
        }
        throw new AssertionError("no " + text);
    }

    private static double under(Sheet sheet, String heading, int below) {
        Row heads = rowOf(sheet, heading);
        for (Cell cell : heads) {
            if (cell.toString().equals(heading)) {
                return sheet.getRow(heads.getRowNum() + below)
                        .getCell(cell.getColumnIndex())
                        .getNumericCellValue();
            }
        }
        throw new AssertionError("no " + heading);
    }

    @Test
    void monthsAreRealDatesAndFiguresAndUnknownPlansAreEmpty() throws Exception {
        Sheet months = book().getSheet("By month");
        assertThat(under(months, "Road failures", 1)).isEqualTo(3);
        assertThat(under(months, "Visits planned", 2)).isEqualTo(7);
        Row first = months.getRow(rowOf(months, "Visits planned").getRowNum() + 1);
        assertThat(first.getCell(0).getLocalDateTimeCellValue().toLocalDate()).isEqualTo(LocalDate.of(2026, 2, 1));
        Cell planned = first.getCell(2);
        assertThat(planned == null ? "" : planned.toString()).isEmpty();
    }

    @Test
    void pricesOfRulesAndCountsOfForecastsAreThere() throws Exception {
        Workbook book = book();
        Row rule = rowOf(book.getSheet("Price of rules"), "the limit of 310,000 km");
        assertThat(rule.getCell(1).getNumericCellValue()).isEqualTo(21_400);
        assertThat(rule.getCell(2).getNumericCellValue()).isEqualTo(52);
        Sheet forecasts = book.getSheet("Forecasts");
        assertThat(under(forecasts, "Forecasts", 1)).isEqualTo(400);
        assertThat(under(forecasts, "Failures happened", 1)).isEqualTo(7);
    }
}
