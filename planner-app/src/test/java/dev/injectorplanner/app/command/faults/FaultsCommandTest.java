package dev.injectorplanner.app.command.faults;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.testkit.TruckLogs;
import dev.injectorplanner.imports.j1939.TroubleCode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FaultsCommandTest {
    private static final Instant AT = Instant.parse("2026-03-01T08:00:00Z");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(new FaultsCommand())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("truck.log"), text);
    }

    private Path driving() throws IOException {
        return new TruckLogs()
                .odometer(AT, 200_000)
                .faults(AT.plusSeconds(1), 3, 0, new TroubleCode(653, 5, 7, 0), new TroubleCode(157, 18, 127, 0))
                .hours(AT.plusSeconds(5), 5_000.5)
                .write(folder.resolve("truck.log"));
    }

    @Test
    void one_json_object_with_a_row_for_each_message_and_code() throws IOException {
        Path log = driving();
        Files.writeString(log, Files.readString(log) + "(1772352009.000000) can0 18FECA00#12345\n");
        assertThat(run(log.toString(), "--json")).isZero();
        assertThat(err.toString()).isEmpty();
        JsonNode json = JsonMapper.shared().readTree(out.toString());
        assertThat(json.get("rows")).hasSize(6);
        JsonNode row = json.get("rows").get(0);
        assertThat(row.get("at").asString()).isEqualTo("2026-03-01T08:00:01.100Z");
        assertThat(row.get("source").asInt()).isZero();
        assertThat(row.get("kind").asString()).isEqualTo("active");
        assertThat(row.get("spn").asInt()).isEqualTo(653);
        assertThat(row.get("fmi").asInt()).isEqualTo(5);
        assertThat(row.get("count").asInt()).isEqualTo(7);
        assertThat(row.get("cylinder").asInt()).isEqualTo(3);
        assertThat(row.get("words").asString())
                .isEqualTo("injector of cylinder 3: current below normal or open circuit");
        assertThat(row.get("lamps").get("amberWarning").asString()).isEqualTo("on");
        JsonNode rail = json.get("rows").get(1);
        assertThat(rail.get("count").isNull()).isTrue();
        assertThat(rail.get("cylinder").isNull()).isTrue();
        assertThat(rail.get("words").asString()).isEqualTo("rail pressure too low, moderately severe");
        assertThat(json.get("damagedLines").asInt()).isEqualTo(1);
        assertThat(json.get("episodes")).hasSize(2);
        assertThat(json.get("episodes").get(0).get("odometerKm").asDouble()).isEqualTo(200_000);
        assertThat(json.get("readings").get(0).get("engineHours").asDouble()).isEqualTo(5_000.5);
    }

    @Test
    void episodes_without_the_row_for_each_message() throws IOException {
        assertThat(run(driving().toString(), "--json", "--episodes")).isZero();
        JsonNode json = JsonMapper.shared().readTree(out.toString());
        assertThat(json.get("rows")).isEmpty();
        assertThat(json.get("episodes").get(1).get("reports").asInt()).isEqualTo(3);
    }

    @Test
    void a_table_of_episodes_for_people() throws IOException {
        assertThat(run(driving().toString())).isZero();
        assertThat(out.toString())
                .contains("2026-03-01 08:00:01  2026-03-01 08:00:03  SPN 653 FMI 5")
                .contains("injector of cylinder 3: current below normal or open circuit")
                .contains("Last meters: odometer 200,000 km, engine hours 5,000.5.")
                .contains("11 frames, 3 fault messages; times are UTC.");
    }

    /** The old layout of SPNs by an engine maker's description (published/j1939.md in module imports). */
    @Test
    void an_old_layout_of_spns() throws IOException {
        Path log = file("(1772352000.000000) can0 1CFECA27#C1FFFE00C201FFFF\n");
        assertThat(run(log.toString(), "--json", "--spn-layout", "1")).isZero();
        assertThat(JsonMapper.shared()
                        .readTree(out.toString())
                        .get("rows")
                        .get(0)
                        .get("spn")
                        .asInt())
                .isEqualTo(520_198);
    }

    /** ISO 15031-5 over ISO 15765: answer to service 03 with P0201 and P0301, and one of three codes in two frames. */
    @Test
    void answers_of_obd() throws IOException {
        Path log = file(
                "(1772352000.000000) can0 7E8#0643020201030100\n(1772352001.000000) can0 18DAF110#1008430301043412\n"
                        + "(1772352001.010000) can0 18DA10F1#3000000000000000\n(1772352001.020000) can0 18DAF110#21C1000000000000\n");
        assertThat(run(log.toString(), "--json")).isZero();
        JsonNode rows = JsonMapper.shared().readTree(out.toString()).get("rows");
        assertThat(rows)
                .extracting(row -> row.get("code").asString())
                .containsExactly("P0201", "P0301", "P0104", "P3412", "U0100");
        assertThat(rows.get(0).get("cylinder").asInt()).isEqualTo(1);
        assertThat(rows.get(0).get("spn").isNull()).isTrue();
    }

    @Test
    void lists_of_codes() throws IOException {
        Path list = file("# after the road test\nSPN 651 FMI 5\nP0202, 0301\n157/18\nP1234\nbanana\n");
        assertThat(run(list.toString(), "--json")).isZero();
        JsonNode json = JsonMapper.shared().readTree(out.toString());
        assertThat(json.get("rows"))
                .extracting(row -> row.get("code").asString())
                .containsExactly("SPN 651 FMI 5", "P0202", "P0301", "SPN 157 FMI 18", "P1234");
        assertThat(json.get("rows").get(4).get("words").asString()).isEqualTo("maker's own code");
        assertThat(json.get("damagedLines").asInt()).isEqualTo(1);
        assertThat(json.get("damaged").get(0).asString())
                .startsWith("line 6, code \"banana\"")
                .contains("Fix: ");
    }

    @Test
    void lists_with_headings() throws IOException {
        Path list = file("truck,seen_at,code,count\nT1,2026-03-01T08:00Z,P0269,4\n");
        assertThat(run(list.toString(), "--json")).isZero();
        JsonNode row = JsonMapper.shared().readTree(out.toString()).get("rows").get(0);
        assertThat(row.get("at").asString()).isEqualTo("2026-03-01T08:00Z");
        assertThat(row.get("count").asInt()).isEqualTo(4);
        assertThat(row.get("cylinder").asInt()).isEqualTo(3);
    }

    @Test
    void what_is_neither_is_refused_in_one_sentence() throws IOException {
        assertThat(run(file("hello\nworld\n").toString())).isEqualTo(1);
        assertThat(err.toString().strip())
                .isEqualTo(
                        "truck.log: is neither a log of bus frames nor a list of fault codes. Fix: log with candump -L,"
                                + " or write one code a line, such as SPN 651 FMI 5 or P0201.");
        assertThat(run(folder.resolve("none.log").toString())).isEqualTo(1);
        assertThat(run(driving().toString(), "--spn-layout", "9")).isEqualTo(2);
    }

    @Test
    void a_log_without_faults() throws IOException {
        assertThat(run(file("(1772352000.000000) can0 18FECA00#00FF00000000FFFF\n")
                        .toString()))
                .isZero();
        assertThat(out.toString()).startsWith("No active faults in this log.");
    }
}
