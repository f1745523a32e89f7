package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site without a browser sets its figures, and its plans follow. */
class SettingsCommandTest {
    @TempDir
    private Path folder;

    private String printed = "";

    private int run(String... args) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
            System.setErr(System.out);
            return PlannerCommand.run(args);
        } finally {
            System.setOut(out);
            System.setErr(err);
            printed = bytes.toString(StandardCharsets.UTF_8);
        }
    }

    @Test
    void what_is_set_is_listed_and_plans_follow() {
        Path dir = folder.resolve("demo");
        String data = dir.resolve("data").toString();
        assertThat(run("demo", "--dir", dir.toString())).as(printed).isZero();

        assertThat(run("settings", "--data", data)).isEqualTo(2);
        assertThat(run("settings", "--data", data, "list")).as(printed).isZero();
        assertThat(printed).containsPattern("weeks +26 weeks +26 weeks");

        assertThat(run("settings", "--data", data, "set", "weeks", "10"))
                .as(printed)
                .isZero();
        assertThat(printed).contains("Weeks of a plan: 10 weeks");
        assertThat(run("plan", "--data", data, "--on", "2026-03-02")).isZero();
        assertThat(printed).contains("weeks 2026-W10 to 2026-W19");
        assertThat(run("plan", "--data", data, "--on", "2026-03-02", "--weeks", "4"))
                .isZero();
        assertThat(printed).contains("weeks 2026-W10 to 2026-W13");

        assertThat(run("settings", "--data", data, "set", "weeks", "0")).isEqualTo(1);
        assertThat(printed).contains("weeks \"0\": is out of range. Fix: ").doesNotContain("Exception");
        assertThat(run("settings", "--data", data, "set", "weaks", "4")).isEqualTo(1);
        assertThat(printed).contains("name one of rescheduling-cost, ");

        assertThat(run("settings", "--data", data, "list", "--json")).isZero();
        assertThat(printed)
                .startsWith("{\"settings\":[{\"name\":\"rescheduling-cost\"")
                .contains("\"name\":\"weeks\",\"value\":\"10\",\"unit\":\"weeks\",\"plannerDefault\":\"26\"")
                .contains("\"whose\":\"site\"");

        for (String[] set : new String[][] {{"currency", "EUR"}, {"paper", "letter"}, {"dates", "day first"}}) {
            assertThat(run("settings", "--data", data, "set", set[0], set[1]))
                    .as(set[0])
                    .isZero();
        }
        assertThat(run("settings", "--data", data, "set", "currency", "dollars"))
                .isEqualTo(1);
        assertThat(run("settings", "--data", data, "set", "log-names", "*.log")).isEqualTo(1);
        assertThat(run("settings", "--data", data, "clear", "weeks")).isZero();
        assertThat(printed).contains("26 weeks (planner default)");
    }
}
