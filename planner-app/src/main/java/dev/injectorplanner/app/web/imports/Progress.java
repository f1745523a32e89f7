package dev.injectorplanner.app.web.imports;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/**
 * How far a load is.
 *
 * @param file the file at hand, or empty while files are looked through
 * @param percent 0 to 100
 * @param words rows done of all, and the time left
 */
record Progress(String file, int percent, String words, long stored, long refused) {
    private static final int FIRST_SECONDS = 3;

    static Progress of(String file, long rows, long done, long refused, Instant since, Instant now) {
        int percent = rows == 0 ? 0 : (int) Math.min(100, 100 * done / rows);
        String words = file.isEmpty()
                ? "The files are being looked through."
                : String.format(Locale.ROOT, "%,d of %,d rows done.%s", done, rows, left(rows, done, since, now));
        return new Progress(file, percent, words, done - refused, refused);
    }

    private static String left(long rows, long done, Instant since, Instant now) {
        long seconds = Duration.between(since, now).toSeconds();
        if (seconds < FIRST_SECONDS || done == 0) {
            return "";
        }
        long left = Math.round((rows - done) * (double) seconds / done);
        return left < 60
                ? " Less than a minute to go."
                : String.format(Locale.ROOT, " About %d min %02d s to go.", left / 60, left % 60);
    }
}
