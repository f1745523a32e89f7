package dev.injectorplanner.app.entry;

import dev.injectorplanner.core.check.UserError;
import java.util.List;
import java.util.stream.Collectors;

/** An entry was refused; nothing of it was kept. */
public final class RefusedEntryException extends RuntimeException implements UserError {
    private static final long serialVersionUID = 1L;

    private final transient List<EntryProblem> problems;

    RefusedEntryException(List<EntryProblem> problems) {
        super(problems.stream().map(EntryProblem::words).collect(Collectors.joining(" ")));
        this.problems = List.copyOf(problems);
    }

    public static RefusedEntryException of(String field, String what, String fix) {
        return new RefusedEntryException(List.of(EntryProblem.of(field, what, fix)));
    }

    /** All that is wrong with it, each at its field. */
    public List<EntryProblem> problems() {
        return problems;
    }
}
