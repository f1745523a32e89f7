package dev.injectorplanner.app.closeout;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Gathers what is wrong with an entry, so that a person is told all of it at once. */
final class Problems {
    private final List<Problem> all = new ArrayList<>();

    void add(String field, String what, String fix) {
        all.add(Problem.of(field, what, fix));
    }

    /** What a record's own guards refuse becomes a problem of that field. */
    <T> @Nullable T guarded(String field, Supplier<@Nullable T> made) {
        try {
            return made.get();
        } catch (InvalidValueException e) {
            all.add(new Problem(
                    field, e.field() + " \"" + e.value() + "\": " + e.reason() + ". Mend: " + e.fix() + "."));
            return null;
        }
    }

    List<Problem> list() {
        return List.copyOf(all);
    }

    void throwIfAny() {
        if (!all.isEmpty()) {
            throw new RefusedEntryException(all);
        }
    }
}
