package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.UserError;
import java.util.List;

/** Rows that are right each by itself and do not fit together. The message lists the first ten. */
public final class InvalidFleetException extends IllegalArgumentException implements UserError {
    private static final long serialVersionUID = 1L;

    private final transient List<String> problems;
    private final int count;

    InvalidFleetException(List<String> problems, int count) {
        super(message(problems, count));
        this.problems = List.copyOf(problems);
        this.count = count;
    }

    private static String message(List<String> problems, int count) {
        String listed = String.join("\n", problems);
        int more = count - problems.size();
        return more == 0 ? listed : listed + "\nand " + more + " more, " + count + " in all.";
    }

    /** The first ten problems, one sentence each. */
    public List<String> problems() {
        return problems;
    }

    /** How many there are in all. */
    public int count() {
        return count;
    }
}
