package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A command beside a process that has the embedded store. */
class HeldStoreTest {
    private static final PrintStream ERR = System.err;

    @TempDir
    private Path folder;

    @AfterEach
    void restore() {
        System.setErr(ERR);
    }

    @Test
    void a_command_gives_up_in_words_and_works_once_the_other_has_stopped() throws Exception {
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        HoldsTheStore.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        try (BufferedReader lines = other.inputReader()) {
            assertThat(lines.readLine()).isEqualTo("open");
            System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
            assertThat(PlannerCommand.run("hold", "list", "--data", folder.toString()))
                    .isEqualTo(1);
            assertThat(err.toString(StandardCharsets.UTF_8))
                    .contains("The store in " + folder.resolve("planner") + " is in use by another process."
                            + " Fix: stop it (serve) first, or use its pages.")
                    .doesNotContain("Exception");
            other.outputWriter().close();
            assertThat(other.waitFor()).isZero();
            assertThat(PlannerCommand.run("hold", "list", "--data", folder.toString()))
                    .isZero();
        } finally {
            other.destroyForcibly();
        }
    }
}
