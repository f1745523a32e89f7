package dev.injectorplanner.app.entry;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Gathers what is wrong with an entry, so that a person is told all of it at once. */
public final class EntryProblems {
    private final List<EntryProblem> all = new ArrayList<>();

    public void add(String field, String what, String fix) {
        all.add(EntryProblem.of(field, what, fix));
    }

    /** What a record's own guards refuse becomes a problem of that field. */
    public <T> @Nullable T guarded(String field, Supplier<@Nullable T> made) {
        try {
            return made.get();
        } catch (InvalidValueException e) {
            all.add(new EntryProblem(
                    field, e.field() + " \"" + e.value() + "\": " + e.reason() + ". Fix: " + e.fix() + "."));
            return null;
        }
    }

    public List<EntryProblem> list() {
        return List.copyOf(all);
    }

    public void throwIfAny() {
        if (!all.isEmpty()) {
            throw new RefusedEntryException(all);
        }
    }
}
