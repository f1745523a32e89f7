package dev.injectorplanner.app.closeout;

import java.util.List;
import java.util.stream.Collectors;

/** An entry was refused; nothing of it was kept. */
public final class RefusedEntryException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    RefusedEntryException(List<Problem> problems) {
        super(problems.stream().map(Problem::words).collect(Collectors.joining(" ")));
        this.problems = List.copyOf(problems);
    }

    static RefusedEntryException of(String field, String what, String fix) {
        return new RefusedEntryException(List.of(Problem.of(field, what, fix)));
    }

    /** All that is wrong with it, each at its field. */
    public List<Problem> problems() {
        return problems;
    }
}
