package dev.injectorplanner.app.command;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.LoadListener;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/**
 * How far a load is: on a terminal a bar with rows, refused rows and the time left; in a pipe nothing. Ctrl-C ends the load
 * behind the batch at hand, and what is stored is said: whole batches are.
 */
final class LoadProgress implements LoadListener, AutoCloseable {
    private static final long LONG_FILE = 10_000;

    private final boolean shown;
    private final boolean stores;
    private final PrintStream err;
    private final @Nullable StopByHand stop;
    private final List<FileReport> finished = new ArrayList<>();
    private @Nullable ProgressBar bar;
    private volatile @Nullable Path file;
    private volatile long rows;
    private volatile long done;
    private volatile long refused;

    /** @param stop where Ctrl-C ends the load behind a batch; null: the program just ends */
    LoadProgress(boolean shown, boolean stores, PrintStream err, @Nullable StopByHand stop) {
        this.shown = shown;
        this.stores = stores;
        this.err = err;
        this.stop = stop;
    }

    /** The load was stopped by hand, between two batches. */
    static final class StoppedException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** The listener for this run. */
    static LoadProgress here(boolean json, boolean stores) {
        return new LoadProgress(!json && System.console() != null, stores, System.err, new StopByHand());
    }

    /** The listener of a load with other work behind it, which Ctrl-C ends at once. */
    static LoadProgress only(boolean json) {
        return new LoadProgress(!json && System.console() != null, true, System.err, null);
    }

    @Override
    public void starting(Path started, long inIt) {
        done = 0;
        refused = 0;
        rows = inIt;
        file = started;
        stopIfAsked();
        if (shown && inIt >= LONG_FILE) {
            bar = new ProgressBarBuilder()
                    .setTaskName(String.valueOf(started.getFileName()))
                    .setInitialMax(inIt)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUnit(" rows", 1)
                    .showSpeed()
                    .build();
        }
    }

    @Override
    public void done(Path of, long dealtWith) {
        done = dealtWith;
        if (bar != null) {
            bar.stepTo(dealtWith);
        }
    }

    @Override
    public void stopIfAsked() {
        if (stop != null && stop.asked()) {
            throw new StoppedException();
        }
    }

    @Override
    public void refused(Path of, long refusedSoFar) {
        refused = refusedSoFar;
        if (bar != null && refusedSoFar > 0) {
            bar.setExtraMessage(String.format(Locale.ROOT, " %,d refused", refusedSoFar));
        }
    }

    @Override
    public void finished(FileReport report) {
        file = null;
        finished.add(report);
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }

    /** Files that were finished. */
    List<FileReport> reports() {
        return List.copyOf(finished);
    }

    /** Where a load that is stopped now stands. */
    String inWords() {
        Path now = file;
        if (now == null) {
            return "Stopped between files: what was reported is stored.";
        }
        return String.format(
                Locale.ROOT,
                "Stopped in %s: %,d of %,d rows done, %,d of them refused.%s",
                now.getFileName(),
                done,
                rows,
                refused,
                stores
                        ? String.format(
                                Locale.ROOT,
                                " %,d are stored. Load it again to go on: nothing is stored twice.",
                                done - refused)
                        : " Nothing of this file is stored.");
    }

    /** Name of the file in which the load was stopped; none between files. */
    Optional<String> stoppedFile() {
        return Optional.ofNullable(file).map(path -> String.valueOf(path.getFileName()));
    }

    /** Says where the load was stopped. */
    void printStop() {
        if (bar != null) {
            bar.close();
        }
        err.println(inWords());
    }

    @Override
    public void close() {
        err.flush();
        if (stop != null) {
            stop.close();
        }
    }
}
