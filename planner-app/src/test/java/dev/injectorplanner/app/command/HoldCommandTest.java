package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A manager's Friday on the command line: plan, pin, look, confirm. */
class HoldCommandTest {
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
    void a_manager_holds_looks_and_confirms() {
        Path dir = folder.resolve("demo");
        String data = dir.resolve("data").toString();
        assertThat(run("demo", "--dir", dir.toString())).as(printed).isZero();

        assertThat(run("hold", "list", "--data", data)).as(printed).isZero();
        assertThat(run("hold", "--data", data, "list")).as(printed).isZero();
        assertThat(printed).contains("No holds.");

        assertThat(run("hold", "--data", data, "pin", "T005", "2026-W12", "--why", "driver on leave"))
                .as(printed)
                .isZero();
        assertThat(run("hold", "--data", data, "list")).isZero();
        assertThat(printed).containsPattern("T005 +pinned to 2026-W12 .* driver on leave");

        assertThat(run("hold", "--data", data, "pin", "T005", "week 12")).isEqualTo(2);
        assertThat(printed).contains("is not an ISO week").contains("Fix: ");
        assertThat(run("hold", "--data", data, "refuse", "T999", "never")).isEqualTo(1);
        assertThat(printed).contains("T999").contains("Fix: ").doesNotContain("Exception");

        assertThat(run("plan", "--data", data, "--on", "2026-03-02", "--keep", "--json"))
                .isZero();
        assertThat(printed).contains("\"truck\":\"T005\",\"depot\":").contains("2026-W12");
        assertThat(run("plan", "--data", data, "--on", "2026-03-02", "--keep", "--refuse", "T005=never"))
                .isEqualTo(2);
        assertThat(printed).contains("--keep: ").contains("Fix: ");

        assertThat(run("announce", "--data", data, "--depot", "Norrvik", "--week", "2026-W10"))
                .as(printed)
                .isZero();
        assertThat(printed).containsPattern("Norrvik, 2026-W10: [1-9]\\d* visits confirmed, [1-9]\\d* of them new: T");
        assertThat(run("hold", "--data", data, "release", "T005")).isZero();
        assertThat(printed).contains("T005: released");
    }

    /** The demo's truck T028 lost rail pressure. */
    @Test
    void a_leak_is_held_off_by_name_and_closed_by_a_repair() throws IOException {
        Path dir = folder.resolve("demo");
        String data = dir.resolve("data").toString();
        assertThat(run("demo", "--dir", dir.toString())).as(printed).isZero();
        assertThat(run("plan", "--data", data, "--on", "2026-03-02")).isZero();
        assertThat(printed).contains("SAFETY  Truck T028").contains("Diagnosis on 2026-03-02 at 07:00");

        assertThat(run("hold", "--data", data, "off", "T028", "--why", "parked"))
                .isEqualTo(1);
        assertThat(printed).contains("can catch fire").contains("--confirm");
        assertThat(run("hold", "--data", data, "off", "T028", "--why", "parked", "--confirm"))
                .as(printed)
                .isZero();
        assertThat(run("plan", "--data", data, "--on", "2026-03-02")).isZero();
        assertThat(printed).contains("HELD OFF by ").contains(": parked.").contains("can catch fire");
        assertThat(run("hold", "--data", data, "resume", "T028")).isZero();

        Path repairs = folder.resolve("repairs.csv");
        Files.writeString(repairs, "truck,done_on,what,by\nT028,2026-03-02,rail pressure valve replaced,Kim\n");
        assertThat(run("load", "--data", data, repairs.toString())).as(printed).isZero();
        assertThat(run("plan", "--data", data, "--on", "2026-03-02")).isZero();
        assertThat(printed).doesNotContain("SAFETY  Truck T028").contains("SAFETY  Truck T022");

        assertThat(run("hold", "--data", data, "day", "T005", "2026-03-04", "--bay", "2", "--start", "09:30"))
                .as(printed)
                .isZero();
        assertThat(run("plan", "--data", data, "--on", "2026-03-02", "--json")).isZero();
        assertThat(printed).contains("2026-03-04T09:30");
    }
}
