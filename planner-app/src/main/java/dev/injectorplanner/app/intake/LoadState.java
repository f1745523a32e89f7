package dev.injectorplanner.app.intake;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Locale;

/** How far a load is: the file at hand, its rows, and the time left. Written by the load, read by whoever shows it. */
public final class LoadState implements LoadListener {
    private static final int FIRST_SECONDS = 3;

    private final InstantSource clock;
    private volatile At at = new At("", 0, 0, 0, Instant.EPOCH);

    private record At(String file, long rows, long done, long refused, Instant since) {}

    public LoadState(InstantSource clock) {
        this.clock = clock;
    }

    @Override
    public void starting(Path file, long rows) {
        at = new At(String.valueOf(file.getFileName()), rows, 0, 0, clock.instant());
    }

    @Override
    public void done(Path file, long rows) {
        At now = at;
        at = new At(now.file, now.rows, rows, now.refused, now.since);
    }

    @Override
    public void refused(Path file, long rows) {
        At now = at;
        at = new At(now.file, now.rows, now.done, rows, now.since);
    }

    /** Name of the file at hand, or empty while files are looked through. */
    public String file() {
        return at.file;
    }

    /** Rows dealt with, of 100. */
    public int percent() {
        At now = at;
        return now.rows == 0 ? 0 : (int) Math.min(100, 100 * now.done / now.rows);
    }

    /** Rows of the file that are stored, or were there already. */
    public long stored() {
        At now = at;
        return now.done - now.refused;
    }

    /** Rows of the file that were refused. */
    public long refused() {
        return at.refused;
    }

    /** Rows done of all, and the time left, such as {@code 120,000 of 450,000 rows done. About 1 min 05 s to go.} */
    public String words() {
        At now = at;
        return now.file.isEmpty()
                ? "The files are being looked through."
                : String.format(Locale.ROOT, "%,d of %,d rows done.%s", now.done, now.rows, left(now));
    }

    /** The same on one line with the file and what became of its rows, for a record. */
    public String line() {
        At now = at;
        return now.file.isEmpty()
                ? words()
                : String.format(
                        Locale.ROOT,
                        "%s: %,d of %,d rows read, %,d stored, %,d refused.%s",
                        now.file,
                        now.done,
                        now.rows,
                        now.done - now.refused,
                        now.refused,
                        left(now));
    }

    private String left(At now) {
        long seconds = Duration.between(now.since, clock.instant()).toSeconds();
        if (seconds < FIRST_SECONDS || now.done == 0) {
            return "";
        }
        long left = Math.round((now.rows - now.done) * (double) seconds / now.done);
        return left < 60
                ? " Less than a minute to go."
                : String.format(Locale.ROOT, " About %d min %02d s to go.", left / 60, left % 60);
    }
}
