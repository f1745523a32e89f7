package dev.injectorplanner.reports.work;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.reports.testkit.Golden;
import dev.injectorplanner.reports.testkit.SmallFleet;
import dev.injectorplanner.reports.testkit.SmallPlan;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class WorkBooksTest {
    private static UpcomingWorkbook upcoming() {
        return new UpcomingWorkbook(SmallFleet.snapshot(), SmallPlan.standard());
    }

    private static WorkListBook workList() {
        return new WorkListBook(
                new FleetIndex(SmallFleet.snapshot()), SmallPlan.standard(), SmallFleet.DEPOT, SmallPlan.FIRST);
    }

    @Test
    void upcomingWorkCellByCell() {
        Golden.check("upcoming-work", upcoming()::write);
    }

    @Test
    void workListCellByCell() {
        Golden.check("work-list", workList()::write);
    }

    @Test
    void recalculatedTheySayWhatTheEngineSays() throws Exception {
        try (XSSFWorkbook book = Golden.open(upcoming()::write)) {
            assertThat(Golden.recalculated(book)).isGreaterThan(8);
        }
        try (XSSFWorkbook book = Golden.open(workList()::write)) {
            assertThat(Golden.recalculated(book)).isEqualTo(3);
        }
    }
}
