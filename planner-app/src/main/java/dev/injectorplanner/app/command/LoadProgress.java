package dev.injectorplanner.app.command;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.LoadListener;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Locale;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/**
 * How far a load is: on a terminal a bar with rows, refused rows and the time left; in a pipe nothing. Stopped by Ctrl-C it
 * says what is stored: whole batches are.
 */
final class LoadProgress implements LoadListener, AutoCloseable {
    private static final long LONG_FILE = 10_000;

    private final boolean shown;
    private final boolean stores;
    private final PrintStream err;
    private final Thread hook = new Thread(this::stopped, "load stopped by hand");
    private @Nullable ProgressBar bar;
    private volatile @Nullable Path file;
    private volatile long rows;
    private volatile long done;
    private volatile long refused;

    LoadProgress(boolean shown, boolean stores, PrintStream err) {
        this.shown = shown;
        this.stores = stores;
        this.err = err;
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** The listener for this run. */
    static LoadProgress here(boolean json, boolean stores) {
        return new LoadProgress(!json && System.console() != null, stores, System.err);
    }

    @Override
    public void starting(Path started, long inIt) {
        done = 0;
        refused = 0;
        rows = inIt;
        file = started;
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
    public void refused(Path of, long refusedSoFar) {
        refused = refusedSoFar;
        if (bar != null && refusedSoFar > 0) {
            bar.setExtraMessage(String.format(Locale.ROOT, " %,d refused", refusedSoFar));
        }
    }

    @Override
    public void finished(FileReport report) {
        file = null;
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }

    private void stopped() {
        err.println(inWords());
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

    @Override
    public void close() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            err.flush(); // the program is ending already, and the hook has its say
        }
    }
}
