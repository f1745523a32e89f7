package dev.injectorplanner.app.closeout;

/**
 * Something that is refused.
 *
 * @param field the field it stands at, such as {@code odometer} or {@code c3.code}
 * @param words one sentence: what, where, how to fix it
 */
public record Problem(String field, String words) {
    static Problem of(String field, String what, String fix) {
        return new Problem(field, what + ". Mend: " + fix + ".");
    }
}
