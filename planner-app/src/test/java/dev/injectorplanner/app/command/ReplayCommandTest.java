package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The replay as a person types it. */
class ReplayCommandTest {
    private static final PrintStream OUT = System.out;
    private static final PrintStream ERR = System.err;

    private record Ran(int exit, String out, String err) {}

    @TempDir
    private Path folder;

    @AfterEach
    void restore() {
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
    void the_scenarios_are_listed_with_what_they_are() {
        Ran ran = run("replay", "--scenario", "list");
        assertThat(ran.exit).isZero();
        assertThat(ran.out).contains("mixed", "v8-wear", "no-signs", "eight trucks, few failures on record");
    }

    @Test
    void an_unknown_scenario_is_refused_with_those_that_there_are() {
        Ran ran = run("replay", "--scenario", "paradise");
        assertThat(ran.exit).isEqualTo(1);
        assertThat(ran.err).contains("paradise", "mixed, v8-wear").doesNotContain("Exception");
    }

    @Test
    void figures_out_of_range_are_wrong_use() {
        Ran ran = run("replay", "--years", "0");
        assertThat(ran.exit).isEqualTo(2);
        assertThat(ran.err).contains("--years");
    }

    @Test
    void policies_are_compared_as_json_and_as_a_table() {
        String[] asked = {
            "replay",
            "--scenario",
            "small-fleet",
            "--fleets",
            "2",
            "--trucks",
            "4",
            "--years",
            "1",
            "--weeks",
            "4",
            "--json"
        };
        Ran ran = run(asked);
        assertThat(ran.exit).as(ran.err).isZero();
        JsonNode replay = JsonMapper.shared().readTree(ran.out);
        assertThat(replay.get("scenario").asString()).isEqualTo("small-fleet");
        assertThat(replay.get("policies")
                        .valueStream()
                        .map(row -> row.get("policy").asString()))
                .containsExactly(
                        "run to failure",
                        "best fixed interval",
                        "best two age thresholds",
                        "best ages and signs",
                        "planner",
                        "clairvoyant");
        for (JsonNode row : replay.get("policies")) {
            assertThat(row.get("interval")).hasSize(2);
            assertThat(row.get("tests").isNumber()
                            && row.get("hours").isNumber()
                            && row.get("roadFailures").isNumber())
                    .isTrue();
            double sum = row.get("costs")
                    .valueStream()
                    .mapToDouble(JsonNode::asDouble)
                    .sum();
            assertThat(sum).isCloseTo(row.get("costPer1000Km").asDouble(), within(1e-6));
        }
        assertThat(run(asked).out).isEqualTo(ran.out);
        asked[asked.length - 1] = "--rules-only";
        assertThat(run(asked).out)
                .contains("2 fleets of 4 trucks, 1 years of planning")
                .contains("Cost per 1,000 km in the site's currency")
                .contains("clairvoyant");
    }

    @Test
    void a_loaded_fleet_is_played_with_its_own_lives() {
        Ran filled = run("demo", "--dir", folder.resolve("demo").toString());
        assertThat(filled.exit).as(filled.err).isZero();
        String data = folder.resolve("demo/data").toString();
        Ran ran = run(
                "replay",
                "--data",
                data,
                "--on",
                "2026-03-02",
                "--fleets",
                "2",
                "--trucks",
                "20",
                "--years",
                "1",
                "--rules-only");
        assertThat(ran.exit).as(ran.err).isZero();
        assertThat(ran.out).contains("own fleet", "V8-140:", "L6-110:", "L4-050:");
        Ran both = run("replay", "--data", data, "--scenario", "mixed");
        assertThat(both.exit).isEqualTo(2);
        assertThat(both.err).contains("Both a scenario and a store are named.");
    }
}
