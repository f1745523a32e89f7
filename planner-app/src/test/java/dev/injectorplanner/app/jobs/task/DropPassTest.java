package dev.injectorplanner.app.jobs.task;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.drop.DropFolder;
import dev.injectorplanner.app.drop.DropSettings;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.testkit.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the record of a scheduled folder load tells, on the way and at its end. */
class DropPassTest {
    private static final Instant NOW = Instant.parse("2026-03-02T05:00:00Z");

    @TempDir
    private Path folder;

    @Test
    void the_record_has_the_rows_read_stored_and_refused() throws IOException {
        Files.writeString(
                folder.resolve("readings.csv"),
                IntStream.range(0, 5_000)
                        .mapToObj(
                                i -> (i == 7 ? "NOBODY" : "T-1") + "," + NOW.plusSeconds(60L * i) + "," + (900_000 + i))
                        .collect(Collectors.joining("\n", "truck,taken_at,odometer_km\n", "\n")));
        List<String> told = new ArrayList<>();
        DropFolder drop = new DropFolder(
                new Intake(Database.HSQLDB.empty()),
                new DropSettings(folder, Duration.ZERO, Duration.ofMinutes(10)),
                "one",
                Clock.fixed(NOW, ZoneOffset.UTC));
        DropPass pass = new DropPass(drop, InstantSource.fixed(NOW), reports -> {});
        JobContext context =
                new JobContext(new RunKey(JobKind.DROP_FOLDER, "", NOW), 1, NOW, ZoneOffset.UTC, told::add);
        pass.run(context); // the first look only notes sizes
        TaskResult result = pass.run(context);
        assertThat(told).first().isEqualTo("readings.csv: 0 of 5,000 rows read, 0 stored, 0 refused.");
        assertThat(told).last().isEqualTo("readings.csv: 5,000 of 5,000 rows read, 4,999 stored, 1 refused.");
        assertThat(told).hasSizeGreaterThan(3);
        assertThat(result.words())
                .contains("refused 1", "rows read 5000, rows stored or unchanged 4999, rows refused 1");
    }
}
