package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.intake.OfficeExports;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a folder of exports to a plan with three commands; the next month's files ask nothing. */
class FirstHourTest {
    private static final PrintStream OUT = System.out;

    @TempDir
    private Path folder;

    private record Ran(int exit, String out) {}

    @AfterEach
    void restore() {
        System.setOut(OUT);
    }

    @Test
    void three_commands_make_a_plan_and_the_next_month_asks_nothing() throws IOException {
        List<String> files = names(OfficeExports.write(folder.resolve("november"), LocalDate.of(2026, 11, 27)));

        Ran start = run(
                "start",
                with(files, "--kits", "v8,inline-six", "--depots", "Ashby,Corley", "--zone", "America/Chicago"));
        assertThat(start.exit).as(start.out).isZero();
        assertThat(start.out)
                .contains("vehicle list.csv: table trucks, headings in row 4, 18 rows")
                .contains("odometers.xlsx: table readings, headings in row 3")
                .contains("Answer in injector jobs.csv.match.yaml: numbers")
                .contains("NEEDED   Trucks");
        answer("injector jobs.csv.match.yaml", "numbers: \"ask\"", "numbers: \"1,234.5\"");
        answer("odometers.xlsx.match.yaml", "numbers: \"ask\"", "numbers: \"1,234.5\"");
        answer("vehicle list.csv.match.yaml", "\"V8 6.6\": \"ask\"", "\"V8 6.6\": \"Example V8\"");
        answer("vehicle list.csv.match.yaml", "\"I6 9.0\": \"ask\"", "\"I6 9.0\": \"Example inline six\"");

        Ran load = run("load", with(files, "--match", folder.resolve("november").toString()));
        assertThat(load.exit).as(load.out).isZero();
        assertThat(load.out)
                .contains("table trucks: 18 read, 18 added, 0 changed, 0 unchanged, 0 refused")
                .contains("table readings: 1,098 read, 1,098 added, 0 changed, 0 unchanged, 0 refused")
                .contains("table replacements: 36 read, 36 added, 0 changed, 0 unchanged, 0 refused");

        Ran plan = run("plan", List.of("--on", "2026-11-30", "--weeks", "8"));
        assertThat(plan.exit).as(plan.out).isZero();
        assertThat(plan.out)
                .contains("Plan of 2026-11-30")
                .contains("Next visits")
                .containsPattern("Planned: [1-9][0-9]* visits");

        List<String> december = names(OfficeExports.write(folder.resolve("december"), LocalDate.of(2026, 12, 31)));
        Ran next = run("load", december);
        assertThat(next.exit).as(next.out).isZero();
        assertThat(next.out)
                .contains("read as table readings by the match made from odometers.xlsx")
                .contains("table readings: 1,098 read, 72 added, 0 changed, 1,026 unchanged, 0 refused")
                .contains("table replacements: 36 read, 0 added, 0 changed, 36 unchanged, 0 refused")
                .doesNotContain("Refused", "goes back", "ask");
    }

    /** A workbook that a program wrote and no spreadsheet ever calculated has formulas without a result. */
    @Test
    void a_formula_without_a_saved_result_is_refused_with_what_to_do_and_the_rest_is_stored() throws IOException {
        three_commands_make_a_plan_and_the_next_month_asks_nothing();
        Path file = OfficeExports.odometersWithFormulas(folder.resolve("january"), LocalDate.of(2027, 1, 31));
        Ran load = run("load", List.of(file.toString()));
        assertThat(load.exit).isEqualTo(1);
        assertThat(load.out)
                .contains("table readings: 1,098 read, 72 added, 0 changed, 1,008 unchanged, 18 refused")
                .contains("Refused: 18 rows, 1 cause")
                .contains("formula", "Fix: ")
                .contains("Refused rows, to correct and load again: ");
        assertThat(load.out.lines().filter(line -> line.contains("formula")))
                .as("one cause, said once")
                .hasSize(1);
    }

    @Test
    void a_match_that_still_asks_is_not_loaded() throws IOException {
        List<String> files = names(OfficeExports.write(folder.resolve("november"), LocalDate.of(2026, 11, 27)));
        run("start", with(files, "--kits", "v8,inline-six", "--depots", "Ashby,Corley", "--zone", "America/Chicago"));
        Ran load = run("load", with(files, "--match", folder.resolve("november").toString()));
        assertThat(load.exit).isEqualTo(1);
        assertThat(load.out)
                .contains(
                        "injector jobs.csv: the match made from injector jobs.csv still asks about numbers. Fix: answer it in"
                                + " the match, then load again.");
    }

    @Test
    void templates_come_out_of_the_program() throws IOException {
        Path to = folder.resolve("templates");
        assertThat(run("templates", List.of("--out", to.toString())).exit).isZero();
        try (var written = Files.list(to)) {
            assertThat(written).hasSize(25);
        }
        assertThat(Files.readString(to.resolve("replacements.csv"))).startsWith("truck,cylinders,done_on");
    }

    private void answer(String name, String asked, String answered) throws IOException {
        Path match = folder.resolve("november").resolve(name);
        String text = Files.readString(match);
        assertThat(text).contains(asked);
        Files.writeString(match, text.replace(asked, answered));
    }

    private static List<String> names(List<Path> files) {
        return files.stream().map(Path::toString).toList();
    }

    private static List<String> with(List<String> files, String... options) {
        List<String> all = new ArrayList<>(List.of(options));
        all.addAll(files);
        return all;
    }

    private Ran run(String command, List<String> rest) {
        List<String> args = new ArrayList<>();
        args.add(command);
        if (!command.equals("templates")) {
            args.addAll(List.of("--data", folder.resolve("data").toString()));
        }
        args.addAll(rest);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        int exit = PlannerCommand.run(args.toArray(String[]::new));
        System.setOut(OUT);
        return new Ran(exit, out.toString(StandardCharsets.UTF_8));
    }
}
