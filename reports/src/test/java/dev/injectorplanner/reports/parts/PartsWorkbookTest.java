package dev.injectorplanner.reports.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.testkit.Golden;
import dev.injectorplanner.reports.testkit.SmallFleet;
import dev.injectorplanner.reports.testkit.SmallPlan;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class PartsWorkbookTest {
    private static PartsWorkbook workbook(Plan plan) {
        return new PartsWorkbook(SmallFleet.snapshot(), plan);
    }

    @Test
    void everyCellAsItWasReadAndFoundRight() {
        Golden.check("parts-needs", workbook(SmallPlan.standard())::write);
    }

    @Test
    void recalculatedItSaysWhatTheEngineSays() throws Exception {
        try (XSSFWorkbook book = Golden.open(workbook(SmallPlan.standard())::write)) {
            assertThat(Golden.recalculated(book)).isGreaterThan(60);
        }
    }

    private static Cell cell(XSSFWorkbook book, String sheet, String partColumn, String part, String column) {
        XSSFSheet found = book.getSheet(sheet);
        for (Row row : found) {
            Cell key = row.getCell(org.apache.poi.ss.util.CellReference.convertColStringToIndex(partColumn));
            if (row.getRowNum() > 3 && key != null && key.toString().equals(part)) {
                return row.getCell(org.apache.poi.ss.util.CellReference.convertColStringToIndex(column));
            }
        }
        throw new IllegalArgumentException(sheet + " has no row of " + part);
    }

    /** The buyer orders 50 more injectors: value, deposits, total and the shelf follow. */
    @Test
    void aQuantityThatIsChangedChangesValuesSumsAndShelves() throws Exception {
        try (XSSFWorkbook book = Golden.open(workbook(SmallPlan.standard())::write)) {
            Cell visits = cell(book, "Order now", "D", SmallFleet.INJECTOR, "G");
            Cell value = cell(book, "Order now", "D", SmallFleet.INJECTOR, "N");
            Cell total = book.getSheet("Order now").getRow(2).getCell(13);
            Cell left = cell(book, "Shelves", "C", SmallFleet.INJECTOR, "J");
            double valueBefore = value.getNumericCellValue();
            double totalBefore = total.getNumericCellValue();
            double leftBefore = left.getNumericCellValue();
            visits.setCellValue(visits.getNumericCellValue() + 50);
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            assertThat(evaluator.evaluate(value).getNumberValue()).isCloseTo(valueBefore + 50 * 480, within(1e-6));
            assertThat(evaluator.evaluate(total).getNumberValue()).isCloseTo(totalBefore + 50 * 480, within(1e-6));
            assertThat(evaluator.evaluate(left).getNumberValue()).isCloseTo(leftBefore + 50, within(1e-6));
        }
    }

    @Test
    void anotherShelfIsChosen() throws Exception {
        try (XSSFWorkbook book = Golden.open(workbook(SmallPlan.standard())::write)) {
            Sheet one = book.getSheet("Stock of one");
            one.getRow(2).getCell(1).setCellValue("North, CLIP");
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            assertThat(evaluator.evaluate(one.getRow(4).getCell(1)).getNumberValue())
                    .isEqualTo(3);
            assertThat(one.getDataValidations()).hasSize(1);
        }
    }

    @Test
    void aCoreThatWasSentIsNoLongerAtStake() throws Exception {
        try (XSSFWorkbook book = Golden.open(workbook(SmallPlan.standard())::write)) {
            Sheet cores = book.getSheet("Cores");
            cores.getRow(4).getCell(12).setCellValue(SmallFleet.TODAY);
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            assertThat(evaluator.evaluate(cores.getRow(2).getCell(13)).getNumberValue())
                    .isZero();
            assertThat(cores.getRow(2).getCell(11).getNumericCellValue()).isEqualTo(120);
        }
    }

    @Test
    void withoutAForecastTheSheetSaysSo() throws Exception {
        Plan plan = SmallPlan.with(FailureForecast.NONE, CoolantRules.standard());
        try (XSSFWorkbook book = Golden.open(workbook(plan)::write)) {
            List<String> texts = new ArrayList<>();
            book.getSheet("Safety stock").forEach(row -> row.forEach(cell -> texts.add(cell.toString())));
            assertThat(texts).contains("no forecast of unplanned need yet");
            Golden.recalculated(book);
        }
    }

    @Test
    void aPlanWithoutVisitsIsAWorkbookAllTheSame() throws Exception {
        try (XSSFWorkbook book = Golden.open(workbook(SmallPlan.withoutVisits())::write)) {
            assertThat(Golden.recalculated(book)).isGreaterThan(20);
        }
    }

    @Test
    void everySheetIsThereInTheReadersOrder() throws Exception {
        try (XSSFWorkbook book = Golden.open(workbook(SmallPlan.standard())::write)) {
            List<String> names = new ArrayList<>();
            book.forEach(sheet -> names.add(sheet.getSheetName()));
            assertThat(names)
                    .containsExactly(
                            "Order now",
                            "Order later",
                            "Short list",
                            "Stock of one",
                            "Shelves",
                            "Stock by week",
                            "Needs by week",
                            "Safety stock",
                            "Cores",
                            "Warranty claims",
                            "Assumptions");
            assertThat(book.getSheet("Stock of one").getDrawingPatriarch().getCharts())
                    .hasSize(1);
        }
    }
}
