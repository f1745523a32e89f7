package dev.injectorplanner.reports.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables keep to the terminal's width; a pipe gets every character. */
class TextTableTest {
    private static final String WHY =
            "cyl 3: 552,637 km since fitting on 2024-12-17, 2,960 km a week; 77 % chance of failing within 12 weeks (+6)";
    private static final int WIDE = 18 + WHY.length() + 24 + 7 + 10;

    private static TextTable table() {
        return new TextTable("Truck", ">Hours", "Why", "Part")
                .row("4111", "1,005.9", WHY, "Example V8 cover gasket")
                .row("4112", "0.7", "short", "seal");
    }

    private static List<String> on(int columns) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TerminalOut terminal = new TerminalOut(new PrintStream(out, true, StandardCharsets.UTF_8), columns);
        table().print(terminal);
        terminal.flush();
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {80, 120})
    void a_line_is_no_longer_than_the_terminal_and_figures_stay_whole(int columns) {
        List<String> lines = on(columns);
        assertThat(lines)
                .hasSize(3)
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
        assertThat(lines.get(1)).contains("4111", "1,005.9", "\u2026").doesNotContain(WHY);
        assertThat(lines.get(1).length()).as("what there is room for is used").isGreaterThan(columns - 4);
        assertThat(lines.get(2)).contains("short").doesNotContain("\u2026");
    }

    @Test
    void what_fits_a_wide_terminal_is_not_cut() {
        assertThat(WIDE).isLessThan(200);
        assertThat(on(200).get(1)).contains(WHY, "Example V8 cover gasket").doesNotContain("\u2026");
    }

    @Test
    void a_pipe_gets_everything() {
        StringWriter out = new StringWriter();
        table().print(new PrintWriter(out));
        assertThat(out.toString()).contains(WHY, "Example V8 cover gasket").doesNotContain("\u2026");
    }

    @Test
    void a_terminal_too_narrow_for_its_figures_keeps_them() {
        assertThat(on(20).get(1)).contains("1,005.9");
    }
}
