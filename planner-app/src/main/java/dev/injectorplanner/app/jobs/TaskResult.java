package dev.injectorplanner.app.jobs;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a task did.
 *
 * @param counts words and numbers for the history, in their order
 * @param effect what to write in the transaction that ends the run
 */
public record TaskResult(Map<String, Long> counts, Effect effect) {
    public TaskResult {
        counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    }

    /** Writes of a run, exactly once: with the run's end, or not at all. */
    @FunctionalInterface
    public interface Effect {
        /** Neither commits nor closes the connection. */
        void write(Connection connection) throws SQLException;

        /** Both, in order. */
        default Effect and(Effect next) {
            return connection -> {
                write(connection);
                next.write(connection);
            };
        }
    }

    /** Counts alone; nothing to write. */
    public static TaskResult counted(Map<String, Long> counts) {
        return new TaskResult(counts, connection -> {});
    }

    /** The counts as the history shows them, such as {@code visits 12, hours 40}. */
    public String words() {
        StringBuilder words = new StringBuilder();
        counts.forEach((word, count) -> words.append(words.isEmpty() ? "" : ", ")
                .append(word)
                .append(' ')
                .append(count));
        return words.toString();
    }
}
