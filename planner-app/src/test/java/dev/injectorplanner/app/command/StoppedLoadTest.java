package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.Main;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.TableWriter;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program itself, interrupted as Ctrl-C does it (SIGINT) while it loads: whole batches stay, and it says which. */
class StoppedLoadTest {
    private static final int ROWS = 300_000;
    private static final int BATCH = 2_000;
    private static final int BEFORE = OneOfEach.fleet().readings().size();

    @TempDir
    private Path folder;

    @Test
    @EnabledOnOs(
            value = {OS.LINUX, OS.MAC},
            disabledReason = "other systems have no signal to send from a test")
    void a_load_that_is_interrupted_keeps_whole_batches_and_says_how_many() throws Exception {
        Path data = folder.resolve("data");
        fill(data);
        Path small = file("a few readings.csv", 0, 10);
        Path large = file("many readings.csv", 10, ROWS);

        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "load",
                        "--data",
                        data.toString(),
                        small.toString(),
                        large.toString())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        waitForRows(data);
        new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                .start()
                .waitFor();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();

        assertThat(process.exitValue()).as(out).isEqualTo(130);
        Matcher said = Pattern.compile("Stopped in many readings\\.csv: ([0-9,]+) of 300,000 rows done, 0 of them"
                        + " refused\\. ([0-9,]+) are stored\\. Load it again to go on: nothing is stored twice\\.")
                .matcher(out);
        assertThat(said.find()).as(out).isTrue();
        assertThat(out).contains("a few readings.csv, table readings: 10 read, 10 added");
        long stored = Long.parseLong(said.group(2).replace(",", ""));
        assertThat(stored).isBetween(1L, ROWS - 1L);
        assertThat(stored % BATCH).as("whole batches").isZero();
        try (Store store = Store.open(StoreSettings.embedded(data))) {
            assertThat(store.snapshot().readings())
                    .as("what was said is what is there")
                    .hasSize((int) stored + 10 + BEFORE);
            assertThat(new AuditTrail(store.dataSource()).findNewest("load a file"))
                    .map(Object::toString)
                    .hasValueSatisfying(note -> assertThat(note).contains("many readings.csv", said.group(2)));
            FileReport again = load(store, List.of(large)).get(0);
            assertThat(again.tables().get(0).unchanged()).isEqualTo(stored);
            assertThat(again.tables().get(0).added()).isEqualTo(ROWS - stored);
        }
    }

    /** The data file of the store grows or its log does: rows are going in. */
    private static void waitForRows(Path data) throws Exception {
        long before = size(data);
        long until = System.nanoTime() + Duration.ofSeconds(120).toNanos();
        while (size(data) < before + 400_000) {
            assertThat(System.nanoTime()).as("rows go in").isLessThan(until);
            Thread.sleep(50);
        }
    }

    private static long size(Path data) throws IOException {
        try (var files = Files.walk(data)) {
            long size = 0;
            for (Path file : files.toList()) {
                String name = String.valueOf(file.getFileName());
                size += name.endsWith(".log") || name.endsWith(".data")
                        ? file.toFile().length()
                        : 0;
            }
            return size;
        }
    }

    private Path file(String name, int from, int rows) throws IOException {
        List<Reading> readings = IntStream.range(from, from + rows)
                .mapToObj(i -> new Reading(
                        i % 2 == 0 ? "T-1" : "T-2",
                        OneOfEach.MOMENT.plusSeconds(60L * (i + 100)),
                        i * 1.5,
                        i * 0.02,
                        false))
                .toList();
        Path file = folder.resolve(name);
        TableWriter.write(file, Tables.READINGS, readings);
        return file;
    }

    private void fill(Path data) throws IOException {
        Path files = Files.createDirectories(folder.resolve("files"));
        try (Store store = Store.open(StoreSettings.embedded(data))) {
            assertThat(load(store, FleetFiles.write(OneOfEach.fleet(), files))).noneMatch(FileReport::anyRefused);
        }
    }

    private static List<FileReport> load(Store store, List<Path> files) {
        return new Intake(store).load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
    }
}
