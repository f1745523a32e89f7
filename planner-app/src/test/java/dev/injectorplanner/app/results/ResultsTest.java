package dev.injectorplanner.app.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.forecast.Calibration;
import dev.injectorplanner.app.forecast.ForecastBook;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Months worked out by hand from a few records, and forecasts kept by a plan and judged 12 weeks later. */
class ResultsTest {
    @TempDir
    private Path folder;

    @Test
    void a_plan_keeps_its_forecast_once_a_week_and_it_is_judged_when_it_is_12_weeks_old() throws IOException {
        judged(StoreSettings.embedded(folder.resolve("data")));
    }

    @Test
    void the_same_on_postgresql() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            judged(new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres"));
        }
    }

    private void judged(StoreSettings settings) throws IOException {
        try (Application application = Application.open(settings)) {
            application
                    .intake()
                    .load(
                            SampleFiles.copyTo(Files.createDirectories(folder.resolve("files"))),
                            LoadSettings.of(Mode.GOOD_ROWS),
                            LoadListener.SILENT);
            LocalDate day = DemoFleet.TODAY;
            for (String key : List.of("one", "two")) {
                application.planning().planAndKeep(key, Instant.now(), day, Policy.standard(), "Norrvik");
            }
            FleetIndex fleet = new FleetIndex(application.store().snapshot());
            ForecastBook book = new ForecastBook(application.store().dataSource());
            int forecasts = application
                    .plans()
                    .findInForce("Norrvik")
                    .orElseThrow()
                    .plan()
                    .risks()
                    .size();

            assertThat(forecasts).isPositive();
            assertThat(book.outcomes(fleet, "Norrvik", day.plusDays(83))).isEmpty();
            assertThat(book.outcomes(fleet, "Norrvik", day.plusDays(84)))
                    .hasSize(forecasts)
                    .noneMatch(Calibration.Outcome::failed);
            assertThat(book.findFirstJudged(List.of("Norrvik"))).contains(day.plusDays(84));
        }
    }

    /**
     * By hand: one injector taken out failed on 10 January and another in its place (one road failure, one part), driven from
     * 100,000 to 103,000 km between readings of January.
     */
    @Test
    void a_month_adds_up() {
        FleetSnapshot base = OneOfEach.fleet();
        Truck truck = base.trucks().get(0);
        String part = base.parts().stream()
                .filter(each -> each.kind().name().equals("INJECTOR"))
                .findFirst()
                .orElseThrow()
                .part();
        LocalDate out = LocalDate.of(2026, 1, 10);
        YearMonth january = YearMonth.of(2026, 1);
        FleetIndex with = new FleetIndex(with(
                base,
                List.of(
                        new FittedInjector(
                                truck.truck(),
                                1,
                                part,
                                null,
                                null,
                                Origin.NEW,
                                LocalDate.of(2024, 1, 5),
                                10_000.0,
                                null,
                                out,
                                100_500.0,
                                null,
                                Found.FAILED,
                                1),
                        new FittedInjector(
                                truck.truck(),
                                1,
                                part,
                                null,
                                null,
                                Origin.NEW,
                                out,
                                100_500.0,
                                null,
                                null,
                                null,
                                null,
                                null,
                                1)),
                List.of(reading(truck, "2026-01-02", 100_000), reading(truck, "2026-01-28", 103_000))));

        MonthResult month = new DepotResults(with, truck.depot(), List.of(), january, january)
                .months(java.util.Map.of(), List.of())
                .get(0);

        assertThat(month.hasPlan()).isFalse();
        assertThat(month.done()).isEqualTo(1);
        assertThat(month.roadFailures()).isEqualTo(1);
        assertThat(month.km()).isCloseTo(3_000, within(1e-9));
        assertThat(month.parts())
                .isCloseTo(with.findPart(part).orElseThrow().price().doubleValue(), within(1e-9));
        assertThat(month.failures())
                .isCloseTo(with.family(truck.family()).roadFailureCost().doubleValue(), within(1e-9));
        assertThat(month.unplannedHours()).isPositive();
        assertThat(month.cost()).isCloseTo(month.parts() + month.labour() + month.failures(), within(1e-9));
        assertThat(month.early()).isZero();
    }

    private static FleetSnapshot with(FleetSnapshot base, List<FittedInjector> injectors, List<Reading> readings) {
        return new FleetSnapshot(
                base.depots(),
                base.capacity(),
                base.engineFamilies(),
                base.access(),
                base.dutyGroups(),
                base.trucks(),
                injectors,
                readings,
                List.of(),
                List.of(),
                base.parts(),
                base.jobParts(),
                base.stock(),
                base.purchaseLines(),
                base.away(),
                base.intervals(),
                base.rules());
    }

    private static Reading reading(Truck truck, String day, double km) {
        return new Reading(truck.truck(), LocalDate.parse(day).atTime(6, 0).toInstant(ZoneOffset.UTC), km, null, false);
    }
}
