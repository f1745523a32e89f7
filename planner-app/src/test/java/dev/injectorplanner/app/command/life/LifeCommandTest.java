package dev.injectorplanner.app.command.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LifeCommandTest {
    /** NIST/SEMATECH e-Handbook of Statistical Methods, section 8.4.1.3: 20 units, 10 failed, stopped at 500 h. */
    private static final double[] HANDBOOK = {54, 187, 216, 240, 244, 335, 361, 373, 375, 386};

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return new CommandLine(new LifeCommand())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    private JsonNode json() {
        return JsonMapper.shared().readTree(out.toString());
    }

    private String file(String... lines) throws IOException {
        Path file = folder.resolve("table.csv");
        Files.write(file, List.of(lines));
        return file.toString();
    }

    private String handbook() throws IOException {
        List<String> lines = new ArrayList<>(List.of("exit,event,count"));
        for (double exit : HANDBOOK) {
            lines.add(exit + ",1,1");
        }
        lines.add("500,0,10");
        return file(lines.toArray(new String[0]));
    }

    private static List<String> names(JsonNode node) {
        return List.copyOf(node.propertyNames());
    }

    @Test
    void fitPrintsOneJsonObject() throws Exception {
        assertThat(run("fit", handbook(), "--json")).isEqualTo(0);
        assertThat(err.toString()).isEmpty();
        JsonNode fit = json();
        assertThat(names(fit))
                .containsExactly(
                        "shape",
                        "scale",
                        "shapeStdErr",
                        "scaleStdErr",
                        "logLikelihood",
                        "events",
                        "suspensions",
                        "b10",
                        "meanLife",
                        "intervals");
        // digits printed on the page: 1.7207 and 606.5280
        assertThat(fit.get("shape").asDouble()).isCloseTo(1.7207, within(2e-4));
        assertThat(fit.get("scale").asDouble()).isCloseTo(606.528, within(1e-2));
        assertThat(fit.get("events").asInt()).isEqualTo(10);
        assertThat(fit.get("suspensions").asInt()).isEqualTo(10);
        JsonNode profile = fit.get("intervals").get("scale").get("profile");
        assertThat(profile.get(0).asDouble()).isCloseTo(437.556745394058, withinPercentage(1e-4));
        assertThat(profile.get(1).asDouble()).isCloseTo(1118.87762469858, withinPercentage(1e-4));
        assertThat(names(fit.get("intervals"))).containsExactly("shape", "scale", "b10");
    }

    @Test
    void aLowerLevelGivesNarrowerIntervals() throws Exception {
        String file = handbook();
        run("fit", file, "--json");
        double wide = json().at("/intervals/b10/fisher/1").asDouble();
        run("fit", file, "--json", "--level", "0.8");
        assertThat(json().at("/intervals/b10/fisher/1").asDouble()).isLessThan(wide);
        assertThat(run("fit", file, "--level", "95")).isEqualTo(2);
        assertThat(err.toString()).contains("--level must be between 0 and 1, such as 0.95, not 95.0.");
    }

    @Test
    void fitReadsAloud() throws Exception {
        assertThat(run("fit", handbook())).isEqualTo(0);
        assertThat(out.toString().lines().map(String::strip).toList())
                .contains("Weibull life of table.csv: 20 units, 10 failed, 10 still working when last seen")
                .anySatisfy(line -> assertThat(line).matches("shape +1\\.7208 +0\\.50215 +0\\.97127 to 3\\.0487.*"))
                .anySatisfy(line -> assertThat(line).startsWith("mean life"));
    }

    @Test
    void refusedInputIsSaidLineByLine() throws Exception {
        assertThat(run("fit", file("exit,event", "x,1", "5,7"), "--json")).isEqualTo(1);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().lines())
                .hasSize(2)
                .allSatisfy(
                        line -> assertThat(line).startsWith("table.csv, line ").contains("Fix: "));
        assertThat(run("fit", file("exit,event", "5,0", "9,0"))).isEqualTo(1);
        assertThat(err.toString()).contains("no failure among the 2 units").contains("Fix: ");
        assertThat(run("fit", folder.resolve("none.csv").toString())).isEqualTo(1);
        assertThat(err.toString()).contains("no such file");
    }

    @Test
    void wrongUse() {
        assertThat(run("fit")).isEqualTo(2);
        assertThat(run("wear")).isEqualTo(2);
        assertThat(run()).isEqualTo(2);
        assertThat(run("interval", "--shape", "2")).isEqualTo(2);
        assertThat(run("interval", "--shape", "-2", "--scale", "1", "--planned", "1", "--failure", "2"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("shape \"-2\": must be above zero");
    }

    /** The survival by hand: 19/20, and 10/20 at the last failure. */
    @Test
    void curve() throws Exception {
        assertThat(run("curve", handbook(), "--json")).isEqualTo(0);
        JsonNode points = json().get("points");
        assertThat(points.size()).isEqualTo(11);
        assertThat(names(points.get(0))).containsExactly("age", "atRisk", "events", "survival", "stdErr");
        assertThat(points.get(0).get("age").asDouble()).isEqualTo(54);
        assertThat(points.get(0).get("atRisk").asInt()).isEqualTo(20);
        assertThat(points.get(0).get("survival").asDouble()).isCloseTo(0.95, within(1e-12));
        assertThat(points.get(9).get("survival").asDouble()).isCloseTo(0.5, within(1e-12));
        assertThat(points.get(9).get("stdErr").asDouble()).isCloseTo(Math.sqrt(0.25 / 20), within(1e-12));
        assertThat(points.get(10).get("events").asInt()).isEqualTo(0);
        assertThat(run("curve", file("exit,event", "5,1"), "--json")).isEqualTo(0);
        assertThat(json().at("/points/0/stdErr").isNull()).isTrue();
    }

    /** Three units by hand; see the test of the function itself. */
    @Test
    void repeats() throws Exception {
        String file = file("unit,age,what", "A,5,event", "A,8,event", "A,12,end", "B,5,event", "B,9,end", "C,7,end");
        assertThat(run("repeats", file, "--json")).isEqualTo(0);
        JsonNode last = json().at("/points/1");
        assertThat(names(last)).containsExactly("age", "atRisk", "events", "mean", "stdErr");
        assertThat(last.get("mean").asDouble()).isCloseTo(7 / 6.0, within(1e-12));
        assertThat(last.get("stdErr").asDouble()).isCloseTo(Math.sqrt(258 / 1296.0), within(1e-12));
        assertThat(run("repeats", file)).isEqualTo(0);
        assertThat(out.toString()).contains("1.1667");
    }

    /** Therneau and Grambsch (2000), appendix E.1, test data 1: Efron estimate in closed form. */
    @Test
    void effects() throws Exception {
        String file = file("stop,event,id,x", "9,1,a,0", "1,1,b,1", "1,0,c,1", "6,1,d,1", "6,1,d,0", "8,0,e,0");
        assertThat(run("effects", file, "--json")).isEqualTo(0);
        JsonNode fit = json();
        assertThat(names(fit))
                .containsExactly("coefficients", "logLikelihood", "logLikelihoodNull", "concordance", "baseline");
        JsonNode x = fit.at("/coefficients/0");
        assertThat(x.get("name").asString()).isEqualTo("x");
        assertThat(x.get("value").asDouble()).isCloseTo(1.6768574855929, within(1e-9));
        assertThat(x.get("stdErr").asDouble()).isCloseTo(1.27761557627883, within(1e-9));
        assertThat(x.get("robustStdErr").asDouble()).isCloseTo(0.99720398637664, within(1e-9));
        List<Double> times = StreamSupport.stream(fit.get("baseline").spliterator(), false)
                .map(point -> point.get("time").asDouble())
                .toList();
        assertThat(times).containsExactly(1.0, 6.0, 8.0, 9.0);
        assertThat(run("effects", file)).isEqualTo(0);
        assertThat(out.toString()).contains("hazard ratio").contains("1.6769");
    }

    @Test
    void effectsWithoutIdHaveNoRobustError() throws Exception {
        assertThat(run("effects", file("stop,event,x", "9,1,0", "1,1,1", "6,1,1", "6,1,0", "8,0,0"), "--json"))
                .isEqualTo(0);
        assertThat(names(json().at("/coefficients/0"))).containsExactly("name", "value", "stdErr");
    }

    /** Barlow and Hunter (1960); digits computed with R 4.2.2. */
    @Test
    void interval() {
        String[] costs = {"interval", "--shape", "2.6", "--scale", "310000", "--planned", "1450", "--failure", "6200"};
        assertThat(run(costs)).isEqualTo(0);
        assertThat(out.toString()).startsWith("Replace at age 165611 at the latest: it costs 0.014611");
        List<String> asJson = new ArrayList<>(List.of(costs));
        asJson.add("--json");
        assertThat(run(asJson.toArray(new String[0]))).isEqualTo(0);
        assertThat(json().get("age").asDouble()).isCloseTo(165_610.950512852, withinPercentage(1e-6));
        assertThat(run("interval", "--shape", "1", "--scale", "9", "--planned", "1", "--failure", "5", "--json"))
                .isEqualTo(0);
        assertThat(json().get("age").isNull()).isTrue();
        assertThat(json().get("costRate")).isEqualTo(json().get("costRateRunToFailure"));
        run("interval", "--shape", "2", "--scale", "9", "--planned", "5", "--failure", "5");
        assertThat(out.toString()).startsWith("Never replace on age: a failure costs no more");
    }

    @Test
    void helpNamesTheColumns() {
        assertThat(run("effects", "--help")).isEqualTo(0);
        assertThat(out.toString()).contains("start (optional), stop, event");
    }
}
