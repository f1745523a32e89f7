package dev.injectorplanner.app.photo;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A photograph without its picture.
 *
 * @param id its number
 * @param visit the visit it was taken in: an ISO week, or a job
 * @param cylinder the cylinder it shows, or null
 * @param note what it shows, or empty
 * @param width pixels
 * @param height pixels
 */
public record Photo(
        long id,
        String truck,
        String visit,
        @Nullable Integer cylinder,
        String note,
        int width,
        int height,
        Instant takenAt,
        String takenBy) {
    /** What it shows, in words. */
    public String words() {
        String of = cylinder == null ? "" : "cylinder " + cylinder;
        return of.isEmpty() ? note.isEmpty() ? "what was found" : note : note.isEmpty() ? of : of + ": " + note;
    }
}
