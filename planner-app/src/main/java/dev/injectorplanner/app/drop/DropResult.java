package dev.injectorplanner.app.drop;

import dev.injectorplanner.app.intake.FileReport;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a pass did with one thing in the drop folder.
 *
 * @param name its name there
 * @param outcome what became of it
 * @param words the same in a sentence
 * @param place where it is now
 * @param report what was read of it, or null where nothing was
 */
public record DropResult(
        String name,
        Outcome outcome,
        String words,
        Path place,
        @Nullable FileReport report) {
    /** What was read of them, also of a file that another node has taken since: its rows may be in by us. */
    public static List<FileReport> loaded(List<DropResult> all) {
        return all.stream().map(DropResult::report).filter(Objects::nonNull).toList();
    }

    /** What became of it. */
    public enum Outcome {
        /** Every row is in the store; the file is in {@code done}. */
        DONE,
        /** The file or some of its rows were refused; it is in {@code refused} with what to fix beside it. */
        REFUSED,
        /** It may still be being written: the next pass looks again. */
        WAITING,
        /** No file to load: a folder, a link. */
        IGNORED,
        /** Another node has taken it meanwhile. */
        ELSEWHERE
    }
}
