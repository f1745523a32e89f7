package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README shows what the demo prints; {@code -Dplanner.readme=write} writes it again. */
class ReadmeTest {
    private static final Path README = Path.of("../README.md");
    private static final String START = "<!-- demo: kept by ReadmeTest -->\n```\n";
    private static final String END = "```\n<!-- /demo -->";

    @TempDir
    private Path folder;

    @Test
    void the_readme_shows_what_the_demo_prints() throws Exception {
        Path dir = folder.resolve("planner-demo");
        String printed = demo(dir).replace(dir.toString(), "planner-demo");
        String readme = Files.readString(README);
        int start = readme.indexOf(START) + START.length();
        int end = readme.indexOf(END, start - 1);
        if ("write".equals(System.getProperty("planner.readme"))) {
            Files.writeString(README, readme.substring(0, start) + printed + readme.substring(end));
            return;
        }
        assertThat(printed).isEqualTo(readme.substring(start, end));
    }

    private static String demo(Path dir) {
        PrintStream terminal = System.out;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        try {
            assertThat(PlannerCommand.run("demo", "--dir", dir.toString())).isZero();
        } finally {
            System.setOut(terminal);
        }
        return out.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }
}
