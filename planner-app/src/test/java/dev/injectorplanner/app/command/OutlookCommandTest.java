package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The outlook of the demo's fleet, as a person types it. */
class OutlookCommandTest {
    private static final PrintStream OUT = System.out;
    private static final PrintStream ERR = System.err;

    @TempDir
    private static Path folder;

    private static String data;

    private record Ran(int exit, String out, String err) {}

    @BeforeAll
    static void fill() {
        Ran filled = run("demo", "--dir", folder.resolve("demo").toString());
        assertThat(filled.exit).as(filled.err).isZero();
        data = folder.resolve("demo/data").toString();
    }

    @AfterAll
    static void restore() {
        System.setOut(OUT);
        System.setErr(ERR);
    }

    private static Ran run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        int exit = PlannerCommand.run(args);
        return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void months_parts_and_depots_with_bands() {
        Ran ran = run("outlook", "--data", data, "--on", "2026-03-02", "--months", "3", "--runs", "20");
        assertThat(ran.exit).as(ran.err).isZero();
        assertThat(ran.out)
                .contains("Outlook from 2026-03-02, 20 runs")
                .contains("2026-03", "2026-05", "Pieces by part", "KV-8140", "Norrvik")
                .contains("Trucks that join the fleet later are not in it.");
    }

    @Test
    void one_depot_as_json() {
        Ran ran = run(
                "outlook",
                "--data",
                data,
                "--on",
                "2026-03-02",
                "--months",
                "2",
                "--runs",
                "20",
                "--depot",
                "Norrvik",
                "--workbook",
                folder.resolve("outlook.xlsx").toString(),
                "--json");
        assertThat(ran.exit).as(ran.err).isZero();
        assertThat(folder.resolve("outlook.xlsx")).isNotEmptyFile();
        JsonNode outlook = JsonMapper.shared().readTree(ran.out);
        assertThat(outlook.get("months")).hasSize(2);
        assertThat(outlook.get("depots")
                        .valueStream()
                        .map(row -> row.get("depot").asString()))
                .containsOnly("Norrvik");
        JsonNode money = outlook.get("months").get(0).get("money");
        assertThat(money.get("low").asDouble())
                .isLessThanOrEqualTo(money.get("median").asDouble());
        assertThat(money.get("median").asDouble())
                .isLessThanOrEqualTo(money.get("high").asDouble());
    }

    @Test
    void each_rule_of_the_site_has_its_price() {
        Ran ran = run("rules", "--data", data, "--on", "2026-03-02", "--weeks", "12");
        assertThat(ran.exit).as(ran.err).isZero();
        assertThat(ran.out).contains("in the plan's 12 weeks", "distance km", "Costs");
        Ran json = run("rules", "--data", data, "--on", "2026-03-02", "--weeks", "12", "--json");
        JsonNode rules = JsonMapper.shared().readTree(json.out).get("rules");
        assertThat(rules.size()).isPositive();
        for (JsonNode rule : rules) {
            assertThat(rule.get("price").asDouble())
                    .isEqualTo(rule.get("moneyWith").asDouble()
                            - rule.get("moneyWithout").asDouble());
        }
    }

    @Test
    void months_out_of_range_are_wrong_use() {
        Ran ran = run("outlook", "--data", data, "--months", "0");
        assertThat(ran.exit).isEqualTo(2);
        assertThat(ran.err).contains("--months");
    }
}
