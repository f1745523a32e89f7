package dev.injectorplanner.reports.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.replay.outlook.Band;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.replay.outlook.Outlook.Month;
import dev.injectorplanner.core.replay.outlook.Outlook.PartMonth;
import dev.injectorplanner.reports.testkit.Golden;
import dev.injectorplanner.reports.testkit.SmallFleet;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OutlookWorkbookTest {
    private static final YearMonth MARCH = YearMonth.of(2026, 3);

    private static Month month(@Nullable String depot, double times) {
        return new Month(
                MARCH,
                depot,
                new Band(3 * times, 1 * times, 3 * times, 6 * times),
                new Band(times, 0, times, 2 * times),
                new Band(2 * times, times, 2 * times, 3 * times),
                new Band(9.5 * times, 4 * times, 9 * times, 16 * times),
                new Band(40 * times, 20 * times, 38 * times, 60 * times),
                new Band(5_000 * times, 2_000 * times, 4_800 * times, 9_000 * times));
    }

    private static Outlook outlook() {
        return new Outlook(
                LocalDate.of(2026, 3, 2),
                LocalDate.of(2026, 8, 30),
                200,
                false,
                "V8: at 200,000 km the whole set",
                List.of("T9"),
                2,
                List.of(month(null, 2)),
                List.of(month("=North", 1), month("South", 1)),
                List.of(
                        new PartMonth(MARCH, null, "INJ-8", new Band(6, 2, 6, 12)),
                        new PartMonth(MARCH, "=North", "INJ-8", new Band(3, 1, 3, 6))),
                List.of(),
                List.of());
    }

    @Test
    void everyCellAsItWasReadAndFoundRight() {
        FleetSnapshot fleet = SmallFleet.snapshot();
        Golden.check("outlook", new OutlookWorkbook(fleet, outlook())::write);
    }

    @Test
    void a_chart_stands_beside_the_months_and_names_that_look_like_formulas_are_text() throws Exception {
        try (XSSFWorkbook book = Golden.open(new OutlookWorkbook(SmallFleet.snapshot(), outlook())::write)) {
            assertThat(book.getSheet("By month").getDrawingPatriarch().getCharts())
                    .hasSize(1);
            Sheet depots = book.getSheet("By depot");
            assertThat(depots.getRow(4).getCell(0).getStringCellValue()).isEqualTo("=North");
        }
    }
}
