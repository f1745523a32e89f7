package dev.injectorplanner.app.desk;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something decided.
 *
 * @param key names its form: sent twice it is done once
 * @param kind what kind
 * @param depot for which depot
 * @param subject the question it answers
 * @param seen the state of the question when it was answered; another state asks again
 * @param words what was done, in words
 * @param did what was made by it: numbers of orders, or trucks held with what held them before
 * @param at when
 * @param by by whom
 * @param undoneAt when it was undone, or null
 */
public record Decision(
        String key,
        Kind kind,
        String depot,
        String subject,
        String seen,
        String words,
        List<String> did,
        Instant at,
        String by,
        @Nullable Instant undoneAt) {
    public Decision {
        did = List.copyOf(did);
    }

    /** What a decision does. */
    public enum Kind {
        /** Orders what is missing, by express or as usual. */
        ORDER,
        /** Has another depot send it. */
        TRANSFER,
        /** Pins visits to another week. */
        MOVE,
        /** Takes holds back. */
        RELEASE,
        /** Does several of these at once. */
        SEVERAL,
        /** Leaves the plan as it is. */
        LEAVE
    }

    public boolean stands() {
        return undoneAt == null;
    }
}
