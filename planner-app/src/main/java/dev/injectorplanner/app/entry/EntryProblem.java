package dev.injectorplanner.app.entry;

/**
 * Something that is refused.
 *
 * @param field the field it stands at, such as {@code odometer} or {@code c3.code}
 * @param words one sentence: what, where, how to fix it
 */
public record EntryProblem(String field, String words) {
    static EntryProblem of(String field, String what, String fix) {
        return new EntryProblem(field, what + ". Fix: " + fix + ".");
    }
}
