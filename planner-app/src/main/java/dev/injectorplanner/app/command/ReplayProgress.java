package dev.injectorplanner.app.command;

import dev.injectorplanner.core.replay.ReplayWatch;
import java.util.concurrent.atomic.AtomicReference;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** How far a replay is, on standard error where that is a terminal; and whether somebody has stopped it. */
final class ReplayProgress implements ReplayWatch, AutoCloseable {
    private final StopByHand stop = new StopByHand();
    private final boolean shown;
    private final AtomicReference<String> task = new AtomicReference<>("");
    private @Nullable ProgressBar bar;

    ReplayProgress(boolean json) {
        shown = !json && System.console() != null;
    }

    @Override
    public boolean stopped() {
        return stop.asked();
    }

    @Override
    public synchronized void progress(String what, int done, int all) {
        if (!shown) {
            return;
        }
        if (!task.getAndSet(what).equals(what)) {
            end();
            bar = new ProgressBarBuilder()
                    .setTaskName(what)
                    .setInitialMax(all > 0 ? all : -1)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUnit(all > 0 ? " weeks" : " tried", 1)
                    .build();
        }
        if (bar != null) {
            bar.stepTo(done);
        }
    }

    private void end() {
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }

    /** Ends the bar, so that what is printed next stands below it. */
    synchronized void finish() {
        end();
    }

    @Override
    public void close() {
        finish();
        stop.close();
    }
}
