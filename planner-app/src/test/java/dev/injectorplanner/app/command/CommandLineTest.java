package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands as a person types them, on the demo's store. */
class CommandLineTest {
    @TempDir
    private static Path folder;

    private static Path demo;
    private static String demoPrinted;
    private static final PrintStream OUT = System.out;
    private static final PrintStream ERR = System.err;

    private record Ran(int exit, String out, String err) {}

    @BeforeAll
    static void fill() {
        demo = folder.resolve("demo");
        Ran ran = run("demo", "--dir", demo.toString());
        assertThat(ran.exit).as(ran.err).isZero();
        demoPrinted = ran.out;
    }

    @AfterAll
    static void restore() {
        System.setOut(OUT);
        System.setErr(ERR);
    }

    @Test
    void the_demo_says_what_it_read_planned_and_wrote() {
        assertThat(demoPrinted)
                .contains("trucks.csv, table trucks: 60 read, 60 added, 0 changed, 0 unchanged, 0 refused")
                .contains("1 unchanged, 1 refused")
                .contains("Plan of 2026-03-02, weeks 2026-W10 to 2026-W35")
                .contains("Next visits")
                .contains("upcoming-work.xlsx", "parts-needs.xlsx", "coolant.xlsx", "work-list-Norrvik-2026-W10.xlsx");
        assertThat(demo.resolve("sheets/upcoming-work.xlsx")).isNotEmptyFile();
    }

    @Test
    void every_run_of_the_demo_prints_the_same() {
        assertThat(run("demo", "--dir", demo.toString()).out).isEqualTo(demoPrinted);
    }

    @Test
    void the_demo_leaves_a_folder_alone_that_is_not_its_own() throws IOException {
        Path other = Files.createDirectories(folder.resolve("other"));
        Files.writeString(other.resolve("thesis.txt"), "years of work");
        Ran ran = run("demo", "--dir", other.toString());
        assertThat(ran.exit).isEqualTo(1);
        assertThat(ran.err)
                .contains("contains something other than the demo. Fix: ")
                .doesNotContain("Exception");
        assertThat(other).isDirectoryNotContaining("glob:**data");
    }

    @Test
    void a_plan_as_json_is_one_object_and_nothing_else() {
        Ran ran =
                run("plan", "--data", demo.resolve("data").toString(), "--on", "2026-03-02", "--weeks", "8", "--json");
        assertThat(ran.exit).isZero();
        JsonNode plan = JsonMapper.shared().readTree(ran.out);
        assertThat(plan.get("today").asString()).isEqualTo("2026-03-02");
        assertThat(plan.get("firstWeek").asString()).isEqualTo("2026-W10");
        assertThat(plan.get("visits").size()).isPositive();
        assertThat(plan.get("visits").get(0).get("why").asString()).isNotBlank();
    }

    @Test
    void one_depot_can_be_planned_and_an_unknown_one_is_named() {
        String data = demo.resolve("data").toString();
        Ran one = run("plan", "--data", data, "--on", "2026-03-02", "--depot", "Norrvik");
        assertThat(one.exit).isZero();
        assertThat(one.out).contains("Norrvik").doesNotContain("Aldermoor");
        Ran none = run("plan", "--data", data, "--depot", "Norvik");
        assertThat(none.exit).isEqualTo(1);
        assertThat(none.err)
                .isEqualToIgnoringNewLines(
                        "--depot Norvik: no such depot. Fix: choose one of Aldermoor, Brennick, Norrvik.");
    }

    @Test
    void sheets_are_written_for_the_readers_asked_for() {
        Path out = folder.resolve("sheets for two");
        Ran ran = run(
                "sheets",
                "--data",
                demo.resolve("data").toString(),
                "--on",
                "2026-03-02",
                "--out",
                out.toString(),
                "--for",
                "buyer,storeman");
        assertThat(ran.exit).isZero();
        assertThat(out).isDirectoryContaining("glob:**parts-needs.xlsx").isDirectoryContaining("glob:**coolant.xlsx");
        assertThat(out.toFile().list()).hasSize(2);
    }

    @Test
    void checking_names_every_problem_and_changes_nothing() throws IOException {
        Path file = Files.writeString(
                folder.resolve("stock.csv"), "depot,part,on_hand\nNorrvik,KX-1002,5\nNowhere,KX-1002,5\n");
        Ran check = run("check", file.toString(), "--data", demo.resolve("data").toString());
        assertThat(check.exit).isEqualTo(1);
        assertThat(check.out).contains("stock.csv, line 3, depot \"Nowhere\": is not known.");
        Ran again = run(
                "load",
                "--check",
                "--json",
                file.toString(),
                "--data",
                demo.resolve("data").toString());
        JsonNode report = JsonMapper.shared().readTree(again.out).get("files").get(0);
        assertThat(report.get("applied").asBoolean()).isFalse();
        assertThat(report.get("tables").get(0).get("changed").asLong()).isEqualTo(1);
    }

    @Test
    void a_plan_says_what_it_saves_how_sure_that_is_and_why() {
        Ran ran = run("plan", "--data", demo.resolve("data").toString(), "--on", "2026-03-02", "--json");
        JsonNode plan = JsonMapper.shared().readTree(ran.out);
        assertThat(plan.get("cost").get("cost").asDouble()).isNegative();
        assertThat(plan.get("cost").get("bound").asDouble())
                .isLessThanOrEqualTo(plan.get("cost").get("cost").asDouble());
        assertThat(plan.get("cost").get("gap").asDouble()).isBetween(0.0, 0.01);
        assertThat(plan.get("reasons").size()).isEqualTo(60);
        for (JsonNode reason : plan.get("reasons")) {
            assertThat(reason.get("words").asString()).isNotBlank();
        }
    }

    @Test
    void a_hold_is_tried_out_and_its_price_told() {
        String data = demo.resolve("data").toString();
        Ran ran = run("plan", "--data", data, "--on", "2026-03-02", "--pin", "T005=2026-W13");
        assertThat(ran.exit).isZero();
        assertThat(ran.out)
                .contains("Preview: the plan costs", "T005 (Aldermoor): 2026-W10")
                .contains("-> 2026-W13");
        assertThat(run("plan", "--data", data, "--on", "2026-03-02", "--pin", "TX5=2026-W13").err)
                .contains("truck \"TX5\": is not known. Fix: ");
        assertThat(run("plan", "--data", data, "--on", "2026-03-02", "--pin", "T005=2027-W13").err)
                .contains("is outside the plan");
    }

    @Test
    void hours_and_bays_are_tried_out_and_what_they_change_is_told() {
        String data = demo.resolve("data").toString();
        Ran ran = run(
                "plan",
                "--data",
                data,
                "--on",
                "2026-03-02",
                "--add-hours",
                "Norrvik=2026-W10:40",
                "--add-bays",
                "Norrvik=2026-W10:2",
                "--json");
        assertThat(ran.exit).isZero();
        JsonNode change = JsonMapper.shared().readTree(ran.out).get("change");
        assertThat(change.get("cost").asDouble()).isLessThanOrEqualTo(0);
        assertThat(change.get("gap").asDouble()).isBetween(0.0, 0.01);
        assertThat(change.get("expectedFailuresBefore").asDouble()).isPositive();
        assertThat(JsonMapper.shared()
                        .readTree(run("plan", "--data", data, "--on", "2026-03-02", "--json").out)
                        .has("change"))
                .isFalse();
        assertThat(run("plan", "--data", data, "--on", "2026-03-02", "--add-hours", "Narvik=2026-W10:40").err)
                .contains("depot \"Narvik\": is not in this plan. Fix: choose one of Aldermoor, Brennick, Norrvik");
        Ran wrong = run("plan", "--data", data, "--on", "2026-03-02", "--add-bays", "Norrvik=2026-W10:half");
        assertThat(wrong.exit).isEqualTo(2);
        assertThat(wrong.err).contains("\"half\" is not a number it could add. Fix: ");
    }

    @Test
    void a_truck_in_the_bay_gets_that_one_the_bank_or_all() {
        String data = demo.resolve("data").toString();
        Ran ran = run("advise", "--data", data, "--on", "2026-03-02", "--truck", "T032", "--failed", "6", "--json");
        JsonNode advice = JsonMapper.shared().readTree(ran.out);
        assertThat(advice.get("today").asString()).isEqualTo("2026-03-02");
        assertThat(advice.get("truck").asString()).isEqualTo("T032");
        assertThat(advice.get("why").asString()).isNotBlank();
        assertThat(advice.get("options").size()).isBetween(3, 4);
        for (JsonNode option : advice.get("options")) {
            assertThat(option.get("cylinders").toString()).contains("6");
        }
        assertThat(run("advise", "--data", data, "--on", "2026-03-02", "--truck", "T032", "--failed", "6").out)
                .startsWith("Truck T032 on 2026-03-02" + System.lineSeparator());
        Ran wrong = run("advise", "--data", data, "--on", "2026-03-02", "--truck", "T032", "--failed", "9");
        assertThat(wrong.exit).isEqualTo(1);
        assertThat(wrong.err).contains("cylinder \"9\": family V8-140 has cylinders 1 to 8. Fix: ");
    }

    @Test
    void a_new_store_is_made_without_a_warning() {
        Ran ran = run("hold", "list", "--data", folder.resolve("new store").toString());
        assertThat(ran.exit).isZero();
        assertThat(ran.err).isEmpty();
    }

    @Test
    void wrong_use_exits_with_two() {
        assertThat(run("plan", "--weeks", "many").exit).isEqualTo(2);
        assertThat(run("sheets", "--for", "king").err).contains("choose from manager, buyer, storeman, mechanic");
        assertThat(run("sheets", "--for", "king").exit).isEqualTo(2);
        assertThat(run("load").exit).isEqualTo(2);
        assertThat(run("load", "x.csv", "--as", "lorries").err).contains("--as").contains("trucks");
        assertThat(run("load", "x.csv", "--as", "lorries").exit).isEqualTo(2);
        assertThat(run("plan", "--weeks", "900").exit).isEqualTo(2);
    }

    private static Ran run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        try {
            int exit = PlannerCommand.run(args);
            return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(OUT);
            System.setErr(ERR);
        }
    }
}
