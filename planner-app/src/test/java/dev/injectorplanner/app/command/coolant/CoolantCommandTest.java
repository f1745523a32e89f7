package dev.injectorplanner.app.command.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CoolantCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String arguments) {
        return new CommandLine(new CoolantCommand())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments.split(" "));
    }

    private JsonNode json() {
        return JsonMapper.shared().readTree(out.toString());
    }

    /** By hand: 50 l at 40 %, 20 l out leaves 12 l of glycol; 50 % needs 25: 13 l of concentrate, 7 of water. */
    @Test
    void oneJsonObject() {
        assertThat(run("--capacity-l 50 --drained-l 20 --now-percent 40 --target-percent 50 --json"))
                .isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(json().propertyNames())
                .contains("concentrateLitres", "waterLitres", "wasteLitres", "afterPercent", "freezingPointC");
        assertThat(json().get("concentrateLitres").asDouble()).isCloseTo(13, within(1e-9));
        assertThat(json().get("waterLitres").asDouble()).isCloseTo(7, within(1e-9));
        assertThat(json().get("wasteLitres").asDouble()).isEqualTo(20);
        assertThat(json().get("afterPercent").asDouble()).isCloseTo(50, within(1e-9));
        // ASHRAE 2001, chapter 21: -36.4 C at 49.6 %, -39.3 C at 51.6 %, straight between
        assertThat(json().get("freezingPointC").asDouble()).isCloseTo(-36.4 - 0.2 * 2.9, within(1e-9));
    }

    @Test
    void protectionTemperature() {
        assertThat(run("--capacity-l 50 --drained-l 20 --now-percent 45 --protect-to-c -36.4 --json"))
                .isZero();
        assertThat(json().get("afterPercent").asDouble()).isCloseTo(49.6, within(1e-6));
        assertThat(json().get("freezingPointC").asDouble()).isCloseTo(-36.4, within(1e-6));
    }

    @Test
    void reuse() {
        assertThat(run("--capacity-l 50 --drained-l 20 --now-percent 50 --target-percent 50 --reuse --json"))
                .isZero();
        assertThat(json().get("putBackLitres").asDouble()).isCloseTo(19, within(1e-9));
        assertThat(json().get("wasteLitres").asDouble()).isCloseTo(1, within(1e-9));
    }

    @Test
    void inWords() {
        assertThat(run("--capacity-l 50 --drained-l 20 --now-percent 40 --target-percent 50"))
                .isZero();
        assertThat(out.toString())
                .contains("Pour 13 l of concentrate and 7 l of demineralised water.")
                .contains("Collect 20 l of old coolant")
                .contains("After: 50 % glycol by volume, freezes at -37 C (ASHRAE 2001");
    }

    @Test
    void refusedTargetsSayWhy() {
        assertThat(run("--capacity-l 40 --drained-l 5 --now-percent 35 --target-percent 50 --json"))
                .isEqualTo(1);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).contains("cannot be reached").contains("drain 9.3 l or more");
        assertThat(run("--capacity-l 40 --drained-l 40 --now-percent 35 --target-percent 35"))
                .isEqualTo(1);
        assertThat(err.toString()).contains("outside 40 to 60 %");
    }

    @Test
    void beyondTheCurvesThereIsNoFreezingPoint() {
        assertThat(run("--capacity-l 40 --drained-l 40 --now-percent 50 --target-percent 65 --any-strength --json"))
                .isZero();
        assertThat(json().get("freezingPointC").isNull()).isTrue();
    }

    @Test
    void wrongUse() {
        assertThat(run("--capacity-l 40 --drained-l 5 --now-percent 35")).isEqualTo(2);
        assertThat(run("--capacity-l 40 --drained-l 5 --now-percent 35 --target-percent 50 --protect-to-c -30"))
                .isEqualTo(2);
        assertThat(run("--capacity-l x --drained-l 5 --now-percent 35 --target-percent 50"))
                .isEqualTo(2);
    }
}
