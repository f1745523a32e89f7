package dev.injectorplanner.app.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ctrl-C ends long work at its next step rather than in the middle: what is finished by then is still printed. Closed when the
 * work is printed.
 */
final class StopByHand implements AutoCloseable {
    private static final long MOST_SECONDS = 60;

    private final AtomicBoolean asked = new AtomicBoolean();
    private final CountDownLatch printed = new CountDownLatch(1);
    private final Thread hook = new Thread(this::wind, "stop by hand");

    StopByHand() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void wind() {
        asked.set(true);
        try {
            // a second Ctrl-C cannot hurry it; a minute is more than any one step takes
            if (!printed.await(MOST_SECONDS, TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    boolean asked() {
        return asked.get();
    }

    @Override
    public void close() {
        printed.countDown();
        if (!asked.get()) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                asked.set(true); // the program is ending already, and the hook with it
            }
        }
    }
}
