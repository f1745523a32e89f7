package dev.injectorplanner.app.web.replay;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.testkit.DemoSite;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.replay.Replay;
import dev.injectorplanner.core.replay.ReplayRequest;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteForm.DateForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.replay.ReplayWorkbook;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class ReplayPageTest {
    private static final SiteForm MILES = new SiteForm(
            new SiteUnits(SiteUnits.Distance.MILES, SiteUnits.Volume.LITRES, SiteUnits.Temperature.CELSIUS),
            "EUR",
            DateForm.ISO,
            SiteForm.STANDARD.paper());

    @TempDir
    private Path folder;

    @Test
    @Timeout(180)
    void itIsBegunWatchedAndStopped() throws Exception {
        try (DemoSite site = DemoSite.start(folder)) {
            Visitor manager = Visitor.as(Role.MANAGER, site.app().address());
            String page = "/replay?scenario=small-fleet&fleets=2&years=1";
            assertThat(manager.get(page).body()).contains("small-fleet").doesNotContain("Being played");
            Map<String, String> begin = Map.of("scenario", "small-fleet", "fleets", "2", "years", "1", "do", "begin");
            assertThat(manager.post("/replay", "/replay", begin).statusCode()).isEqualTo(302);
            assertThat(manager.get(page).body()).contains("Being played");
            Map<String, String> stop = Map.of("scenario", "small-fleet", "fleets", "2", "years", "1", "do", "stop");
            manager.post("/replay", "/replay", stop);
            String shown = manager.get(page).body();
            while (shown.contains("Being played")) {
                Thread.sleep(200);
                shown = manager.get(page).body();
            }
            assertThat(shown).contains("stopped before its end");
            assertThat(manager.get("/replay?fleets=3").statusCode()).isEqualTo(400);
            assertThat(manager.get("/replay?scenario=moon").statusCode()).isEqualTo(400);
        }
    }

    /** A cost per 1,000 miles is 1.609344 times that per 1,000 km (international mile). */
    @Test
    void theSameInMilesOnPageAndSheet() throws Exception {
        ReplayResult result = Replay.run(
                new ReplayRequest(Scenarios.getScenario("small-fleet"), 2, 1, 7, List.of(), 1),
                new Planner(new ExactScheduler(new SearchLimits(1, 1e-3, 1, 1))),
                ReplayWatch.NONE);
        ReplayView km = ReplayView.of(result, "planner", SiteForm.STANDARD);
        ReplayView miles = ReplayView.of(result, "planner", MILES);
        assertThat(miles.unit()).isEqualTo("1,000 mi");
        assertThat(miles.bars()).hasSameSizeAs(result.policies());
        double perKm = result.policies().get(0).costPer1000Km();
        assertThat(km.bars().get(0).cost()).isEqualTo(String.format("%.1f", perKm));
        assertThat(miles.bars().get(0).cost()).isEqualTo(String.format("%.1f", perKm * 1.609344));
        assertThat(km.sections())
                .extracting(section -> section.rows().size())
                .contains(result.policies().size());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new ReplayWorkbook(result).write(out, MILES);
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            assertThat(book.getSheetAt(0).getRow(3).getCell(1).getStringCellValue())
                    .isEqualTo("Cost per 1,000 mi, EUR");
            assertThat(book.getSheetAt(0).getRow(4).getCell(1).getNumericCellValue())
                    .isCloseTo(perKm * 1.609344, org.assertj.core.api.Assertions.within(1e-6));
        }
    }
}
