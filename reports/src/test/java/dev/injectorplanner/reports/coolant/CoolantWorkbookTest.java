package dev.injectorplanner.reports.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.coolant.GlycolWater;
import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.testkit.Golden;
import dev.injectorplanner.reports.testkit.SmallPlan;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class CoolantWorkbookTest {
    private static Plan plan(CoolantRules rules) {
        return SmallPlan.with(FailureForecast.NONE, rules);
    }

    @Test
    void everyCellAsItWasReadAndFoundRight() {
        Golden.check("coolant", new CoolantWorkbook(plan(CoolantRules.standard().withProtectToC(-36.4)))::write);
    }

    @Test
    void recalculatedItSaysWhatTheEngineSays() throws Exception {
        CoolantRules standard = CoolantRules.standard();
        for (CoolantRules rules : new CoolantRules[] {
            standard,
            standard.withRenew(true),
            standard.withProtectToC(-33.3),
            standard.withRenew(true).withProtectToC(-48.0),
            standard.withRenew(true).withProtectToC(-28.7)
        }) {
            try (XSSFWorkbook book = Golden.open(new CoolantWorkbook(plan(rules))::write)) {
                assertThat(Golden.recalculated(book)).isGreaterThan(80);
            }
        }
    }

    /** By hand: 50 l at 45 %, 20 l out for new coolant at 55 %: 27.5 - 13.5 = 14 l of concentrate, 6 of water. */
    @Test
    void anotherStrengthChangesWhatIsDrawn() throws Exception {
        try (XSSFWorkbook book =
                Golden.open(new CoolantWorkbook(plan(CoolantRules.standard().withRenew(true)))::write)) {
            Sheet visits = book.getSheet("By visit");
            assertThat(visits.getRow(4).getCell(2).toString()).isEqualTo("+T2");
            visits.getRow(4).getCell(6).setCellValue(55);
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            assertThat(evaluator.evaluate(visits.getRow(4).getCell(9)).getNumberValue())
                    .isCloseTo(14, within(1e-9));
            assertThat(evaluator.evaluate(visits.getRow(4).getCell(10)).getNumberValue())
                    .isCloseTo(6, within(1e-9));
            assertThat(evaluator.evaluate(visits.getRow(4).getCell(13)).getNumberValue())
                    .isCloseTo(GlycolWater.findFreezingPointC(55).orElseThrow(), within(1e-4));
            Sheet weeks = book.getSheet("By week");
            assertThat(evaluator.evaluate(weeks.getRow(4).getCell(5)).getNumberValue())
                    .isCloseTo(14, within(1e-9));
        }
    }

    @Test
    void aSmallerContainerChangesTheirNumber() throws Exception {
        try (XSSFWorkbook book =
                Golden.open(new CoolantWorkbook(plan(CoolantRules.standard().withRenew(true)))::write)) {
            book.getSheet("Containers").getRow(4).getCell(1).setCellValue(5);
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            // 9 l of concentrate: two containers of 5 l
            assertThat(evaluator
                            .evaluate(book.getSheet("By week").getRow(4).getCell(8))
                            .getNumberValue())
                    .isEqualTo(2);
        }
    }

    @Test
    void aPlanWithoutCoolantIsAWorkbookAllTheSame() throws Exception {
        try (XSSFWorkbook book = Golden.open(new CoolantWorkbook(SmallPlan.withoutVisits())::write)) {
            assertThat(Golden.recalculated(book)).isGreaterThan(40);
        }
    }
}
