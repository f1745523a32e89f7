package dev.injectorplanner.app.command.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ScheduleCommandTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(new ScheduleCommand())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    private JsonNode json() {
        return JsonMapper.shared().readTree(out.toString());
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("depot.json"), text).toString();
    }

    private static Path computed(String name) throws URISyntaxException {
        return Path.of(
                ScheduleCommandTest.class.getResource("/computed/" + name).toURI());
    }

    /** Source of the optimum: computed/schedule-50.md. */
    @Test
    void theInstanceOfFiftyTrucksIsSolvedToItsOptimum() throws URISyntaxException {
        Path instance = computed("schedule-50.json");
        assertThat(run(instance.toString(), "--json", "--seconds", "30")).isZero();
        assertThat(json().path("objective").doubleValue()).isEqualTo(-54_203);
        assertThat(json().path("bound").doubleValue()).isCloseTo(-54_203, within(1e-3));
        assertThat(json().path("gap").doubleValue()).isLessThan(1e-4);
        addUpAgain(JsonMapper.shared().readTree(instance.toFile()), json());
    }

    /** Adds the choices up from the file alone. */
    private static void addUpAgain(JsonNode instance, JsonNode answer) {
        Set<String> offered = new HashSet<>();
        for (JsonNode truck : instance.path("trucks")) {
            for (JsonNode option : truck.path("options")) {
                offered.add(truck.path("truck").stringValue() + " " + option.get(0) + " " + option.get(1) + " "
                        + option.get(2));
            }
        }
        Set<String> trucks = new HashSet<>();
        long[] tenths = new long[26];
        long cost = 0;
        for (JsonNode choice : answer.path("choices")) {
            String truck = choice.path("truck").stringValue();
            assertThat(trucks.add(truck)).as(truck).isTrue();
            assertThat(offered)
                    .contains(truck + " " + choice.path("week") + " " + choice.path("tenths") + " "
                            + choice.path("cost"));
            tenths[choice.path("week").intValue()] += choice.path("tenths").longValue();
            cost += choice.path("cost").longValue();
        }
        for (int week = 0; week < tenths.length; week++) {
            assertThat(tenths[week])
                    .as("week %d", week)
                    .isLessThanOrEqualTo(
                            instance.path("capacity_tenths").get(week).longValue());
        }
        assertThat(answer.path("objective").longValue()).isEqualTo(cost);
    }

    /** Two trucks of 6 h, one week of 10 h with 2 h overtime at 5 a tenth: 20 tenths cost 100, so both are worth it. */
    @Test
    void overtimeIsPartOfTheObjective() throws IOException {
        String file = file("{\"weeks\":1,\"capacity_tenths\":[100],\"overtime_tenths\":[20],"
                + "\"overtime_cost_per_tenth\":5,\"trucks\":[{\"truck\":\"A\",\"options\":[[0,60,-300]]},"
                + "{\"truck\":\"B\",\"options\":[[0,60,-250.5]]},{\"truck\":\"C\",\"options\":[]}]}");
        assertThat(run(file, "--json")).isZero();
        assertThat(json().path("objective").doubleValue()).isEqualTo(-450.5);
        assertThat(json().path("bound").doubleValue()).isCloseTo(-450.5, within(0.05));
        assertThat(json().propertyNames())
                .containsExactlyInAnyOrder("objective", "bound", "gap", "seconds", "stop", "choices");
    }

    @Test
    void forPeople() throws IOException {
        String file = file("{\"weeks\":1,\"capacity_tenths\":[100],"
                + "\"trucks\":[{\"truck\":\"A\",\"options\":[[0,60,-300]]},{\"truck\":\"B\",\"options\":[]}]}");
        assertThat(run(file)).isZero();
        assertThat(out.toString())
                .contains("Schedule of depot.json: 1 truck placed, 1 not")
                .contains("Cost compared with no visit -300.00; lower bound -300.00; gap 0.000 %")
                .containsPattern("A +0 +6\\.00 +-300\\.00");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            {"weeks": 2,                        | line 1, column
            [1]                                 | is not one JSON object
            {"weeks": 0}                        | weeks: is 0, outside 1 to 520
            {"weeks": 1.5}                      | weeks: is not a whole number
            {"weeks": 1}                        | capacity_tenths: is not a list of numbers
            {"weeks": 2, "capacity_tenths":[1]} | capacity_tenths: has 1 numbers. Fix: give one number for each of the 2
            {"weeks": 1, "capacity_tenths":["x"]} | capacity_tenths, week 0: is not a number: "x"
            {"weeks": 1, "capacity_tenths":[-1]} | capacity_tenths, week 0: is -1, outside 0 to 1000000
            {"weeks": 1, "capacity_tenths":[1]} | trucks: is not a list
            {"weeks": 1, "capacity_tenths":[1], "trucks":[{}]} | truck 1: has no name
            {"weeks": 1, "capacity_tenths":[1], "trucks":[{"truck":"A"}]} | truck "A": has no list of options
            {"weeks": 1, "capacity_tenths":[1], "trucks":[{"truck":"A","options":[[0,1]]}]} | truck "A", option 1: is not [week
            {"weeks": 1, "capacity_tenths":[1], "trucks":[{"truck":"A","options":[[1,1,1]]}]} | option 1, week: is 1, outside 0 to 0
            {"weeks": 1, "capacity_tenths":[1], "trucks":[{"truck":"A","options":[[0,1,null]]}]} | cost: is not a number: null
            {"weeks": 1, "capacity_tenths":[1], "trucks":[{"truck":"A","options":[]},{"truck":"A","options":[]}]} | truck 2: is called "A" like one before
            """)
    void aBadFileIsRefusedInOneLine(String text, String complaint) throws IOException {
        assertThat(run(file(text))).isEqualTo(1);
        List<String> lines = err.toString().lines().toList();
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0)).startsWith("depot.json").contains(complaint).contains("Fix: ");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void aFileThatIsNotThere() {
        assertThat(run(folder.resolve("none.json").toString())).isEqualTo(1);
        assertThat(err.toString()).startsWith("none.json: no such file.");
    }

    @Test
    void wrongUse() throws IOException {
        assertThat(run(file("{}"), "--seconds", "0")).isEqualTo(2);
        assertThat(err.toString()).contains("--seconds must be above 0");
    }
}
