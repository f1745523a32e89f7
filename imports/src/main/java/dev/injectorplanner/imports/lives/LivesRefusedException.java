package dev.injectorplanner.imports.lives;

import dev.injectorplanner.core.check.UserError;
import java.util.List;

/**
 * A file that cannot be used as it is. A statistic of half a file would mislead, so one bad cell refuses it; every bad
 * cell has its own line that says where it is, what is wrong and how to fix it.
 */
public final class LivesRefusedException extends Exception implements UserError {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // an immutable list of strings
    private final List<String> complaints;

    LivesRefusedException(List<String> complaints) {
        super(String.join(System.lineSeparator(), complaints));
        this.complaints = List.copyOf(complaints);
    }

    LivesRefusedException(String complaint) {
        this(List.of(complaint));
    }

    /** One line each, in the order of the file. */
    public List<String> complaints() {
        return complaints;
    }
}
