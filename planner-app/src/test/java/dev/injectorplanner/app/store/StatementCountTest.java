package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.plan.Policy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A depot's plan is read and kept with as many statements for many trucks as for few: none a row. */
class StatementCountTest {
    @TempDir
    private Path folder;

    /** What was asked of the database for one depot of a fleet. */
    private record Counts(int trucks, long read, long planned) {}

    private Counts of(int fleet) throws IOException {
        Path place = Files.createDirectories(folder.resolve("fleet" + fleet));
        try (Application application = Application.open(StoreSettings.embedded(place.resolve("data")))) {
            FleetSnapshot made =
                    new FleetGenerator(DemoFleet.ofSize(fleet, 3)).generate().snapshot();
            application
                    .intake()
                    .load(
                            FleetFiles.write(made, Files.createDirectories(place.resolve("files"))),
                            LoadSettings.of(Mode.GOOD_ROWS),
                            LoadListener.SILENT);
            Store store = application.store();
            String depot = made.depots().get(0).depot();
            long start = store.statements();
            FleetSnapshot read = store.findSnapshot(depot).orElseThrow();
            long afterReading = store.statements();
            application
                    .planning()
                    .planAndKeep("p", Instant.parse("2026-03-02T09:00:00Z"), DemoFleet.TODAY, Policy.standard(), depot);
            int here = (int) read.trucks().stream()
                    .map(Truck::depot)
                    .filter(depot::equals)
                    .count();
            return new Counts(here, afterReading - start, store.statements() - afterReading);
        }
    }

    @Test
    void noStatementARow() throws IOException {
        Counts few = of(24);
        Counts many = of(120);
        assertThat(many.trucks()).isGreaterThan(3 * few.trucks());
        assertThat(many.read()).isEqualTo(few.read()).isLessThan(60);
        assertThat(many.planned()).isEqualTo(few.planned()).isLessThan(200);
    }
}
