package dev.injectorplanner.app.command;

import java.io.IOException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** How wide the terminal is on which a command prints. */
final class TerminalWidth {
    private static final int LEAST = 60;

    private TerminalWidth() {}

    /** Characters in a line; 0 where the output goes to a pipe or a file, or nobody knows. */
    static int columns() {
        if (System.console() == null) {
            return 0;
        }
        String said = System.getenv("COLUMNS");
        if (said != null && said.matches("[0-9]{2,4}")) {
            return Math.max(LEAST, Integer.parseInt(said));
        }
        try (Terminal terminal = TerminalBuilder.builder().dumb(true).build()) {
            return terminal.getWidth() <= 0 ? 0 : Math.max(LEAST, terminal.getWidth());
        } catch (IOException | RuntimeException e) {
            return 0;
        }
    }
}
