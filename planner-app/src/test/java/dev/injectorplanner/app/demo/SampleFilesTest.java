package dev.injectorplanner.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Run with {@code -Dplanner.samples=write} to make the committed files again; then read the difference. */
class SampleFilesTest {
    private static final Path COMMITTED = Path.of("../imports/samples/demo");

    @TempDir
    private Path folder;

    @Test
    void the_committed_files_are_those_that_the_generator_makes() throws IOException {
        boolean write = "write".equals(System.getProperty("planner.samples"));
        Path made = write ? Files.createDirectories(COMMITTED) : folder;
        for (Path file : SampleFiles.make(made)) {
            assertThat(COMMITTED.resolve(file.getFileName())).hasSameTextualContentAs(file);
        }
    }
}
