package dev.injectorplanner.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.reports.table.TerminalOut;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** When tables are cut to the terminal: not in a pipe, and not where everything is wanted. */
class TerminalOutTest {
    private static final PrintStream NOWHERE = new PrintStream(new ByteArrayOutputStream());

    @ParameterizedTest
    @ValueSource(ints = {80, 120, 200})
    void on_a_terminal_tables_are_as_wide_as_it_is(int columns) {
        assertThat(PlannerCommand.out(columns, NOWHERE, "plan", "--data", "x"))
                .get()
                .isInstanceOfSatisfying(
                        TerminalOut.class, out -> assertThat(out.columns()).isEqualTo(columns));
    }

    @Test
    void all_cuts_nothing() {
        assertThat(PlannerCommand.out(80, NOWHERE, "plan", "--all")).isEmpty();
    }

    @Test
    void a_pipe_cuts_nothing() {
        assertThat(PlannerCommand.out(0, NOWHERE, "plan")).isEmpty();
    }
}
