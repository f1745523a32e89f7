package dev.injectorplanner.app.web.download;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/** A file that is being made, or was. */
public final class Download {
    private final CompletableFuture<byte[]> file = new CompletableFuture<>();
    private volatile String step = "";
    private volatile long begunNanos;

    Download() {}

    /** What its maker is doing, for whoever waits. */
    public void step(String words) {
        step = words;
    }

    void begin() {
        begunNanos = System.nanoTime();
        step = "started";
    }

    void done(byte[] bytes) {
        file.complete(bytes);
    }

    void failed(Throwable cause) {
        file.completeExceptionally(cause);
    }

    boolean isOver() {
        return file.isDone();
    }

    int size() {
        byte @Nullable [] bytes = file.isDone() && !file.isCompletedExceptionally() ? file.join() : null;
        return bytes == null ? 0 : bytes.length;
    }

    /** How far it is, in words. */
    public String progress() {
        if (step.isEmpty()) {
            return "waiting for other files to be finished";
        }
        return step + ", " + Duration.ofNanos(System.nanoTime() - begunNanos).toSeconds() + " s so far";
    }

    /**
     * The file, once it is made.
     *
     * @param patience how long to wait for it
     * @throws RuntimeException that which its maker threw
     */
    Optional<byte[]> find(Duration patience) throws InterruptedException {
        try {
            return Optional.of(file.get(patience.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            return Optional.empty();
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new CompletionException(e.getCause());
        }
    }
}
