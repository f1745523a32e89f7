package dev.injectorplanner.app.web.download;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.injectorplanner.app.store.StoreLane;
import jakarta.annotation.PreDestroy;
import jakarta.servlet.http.HttpServletResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.springframework.ui.Model;

/**
 * Files made one at a time beside the pages. The same file asked for by several is made once; what was made stays for some
 * minutes, in a bounded part of the memory.
 */
public final class Downloads implements AutoCloseable {
    private static final int MOST_QUEUED = 20;
    private static final int MOST_WAITING = 20;
    private static final long BYTES = Math.max(16L << 20, Runtime.getRuntime().maxMemory() / 20);
    private static final Duration KEPT = Duration.ofMinutes(10);
    private static final String SECONDS_TO_NEXT_LOOK = "2";

    private final ThreadPoolExecutor worker =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(MOST_QUEUED), Downloads::thread);
    private final Semaphore waiting = new Semaphore(MOST_WAITING);
    private final Duration patience;
    private final Cache<Object, Download> finished = Caffeine.newBuilder()
            .maximumWeight(BYTES >> 10)
            .weigher((Object what, Download made) -> 1 + (made.size() >> 10))
            .expireAfterAccess(KEPT)
            .build();
    private final Cache<Object, Download> making = Caffeine.newBuilder().build();

    /** Writes a file, and tells how far it is. */
    public interface Maker {
        void make(Download progress, OutputStream out) throws IOException;
    }

    /** @param patience how long who asks waits for a file before being told how far it is */
    public Downloads(Duration patience) {
        this.patience = patience;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "download");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * A file, begun now where nobody asked for it before.
     *
     * @param what equal for the same file; another where anything in it has changed
     * @throws TooManyDownloadsException where too many wait to be made
     */
    public Download ask(Object what, Maker maker) {
        Download made = finished.getIfPresent(what);
        if (made != null) {
            return made;
        }
        return making.get(what, key -> {
            Download begun = new Download();
            try {
                worker.execute(() -> make(key, begun, maker));
            } catch (RejectedExecutionException e) {
                throw new TooManyDownloadsException(e);
            }
            return begun;
        });
    }

    /** The file where it is made within the time that one waits here, else nothing. */
    public Optional<byte[]> find(Download download) {
        boolean mayWait = !download.isOver() && waiting.tryAcquire();
        try {
            return download.find(mayWait ? patience : Duration.ZERO);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (RuntimeException e) {
            finished.asMap().values().remove(download); // told once; who asks next has it made again
            throw e;
        } finally {
            if (mayWait) {
                waiting.release();
            }
        }
    }

    /**
     * Answers a request: with the file, or with the page that says how far it is and asks again by itself.
     *
     * @param what equal for the same file, as for {@link #ask}
     * @return a file or the name of a page
     */
    public Object answer(Object what, Maker maker, FileOffer offer, HttpServletResponse response, Model model) {
        Download download = ask(what, maker);
        Optional<byte[]> file = find(download);
        if (file.isPresent()) {
            return offer.answer(file.get());
        }
        response.setStatus(HttpServletResponse.SC_ACCEPTED);
        response.setHeader("Refresh", SECONDS_TO_NEXT_LOOK);
        model.addAttribute("offer", offer);
        model.addAttribute("progress", download.progress());
        return "download-wait";
    }

    private void make(Object what, Download download, Maker maker) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            download.begin();
            StoreLane.<RuntimeException>reading(() -> maker.make(download, out));
            if (out.size() > BYTES) {
                throw new TooManyDownloadsException(out.size() >> 20);
            }
            download.done(out.toByteArray());
            finished.put(what, download); // weighed by its size, so not before
            making.invalidate(what);
        } catch (IOException | RuntimeException | OutOfMemoryError e) {
            making.invalidate(what);
            finished.put(
                    what, download); // before it is told: who is told takes it away, and the next one has it made again
            download.failed(e);
        }
    }

    @PreDestroy
    @Override
    public void close() {
        worker.shutdownNow();
    }
}
