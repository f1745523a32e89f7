package dev.injectorplanner.app.command;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.LoadListener;
import java.nio.file.Path;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** A progress bar on standard error for long files, where that is a terminal. */
final class LoadProgress implements LoadListener {
    private static final long LONG_FILE = 10_000;

    private @Nullable ProgressBar bar;

    /** The listener for this run: a bar on a terminal, silence elsewhere. */
    static LoadListener here(boolean json) {
        return json || System.console() == null ? SILENT : new LoadProgress();
    }

    @Override
    public void starting(Path file, long rows) {
        if (rows >= LONG_FILE) {
            bar = new ProgressBarBuilder()
                    .setTaskName(String.valueOf(file.getFileName()))
                    .setInitialMax(rows)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUnit(" rows", 1)
                    .build();
        }
    }

    @Override
    public void done(Path file, long rows) {
        if (bar != null) {
            bar.stepTo(rows);
        }
    }

    @Override
    public void finished(FileReport report) {
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }
}
