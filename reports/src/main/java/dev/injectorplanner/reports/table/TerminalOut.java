package dev.injectorplanner.reports.table;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Output on a terminal, whose width tables keep to. */
public final class TerminalOut extends PrintWriter {
    private final int columns;

    /** @param columns characters in a line of the terminal, above 0 */
    public TerminalOut(PrintStream out, int columns) {
        super(out, true, StandardCharsets.UTF_8);
        this.columns = columns;
    }

    public int columns() {
        return columns;
    }
}
