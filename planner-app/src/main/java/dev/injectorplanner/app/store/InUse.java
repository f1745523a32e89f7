package dev.injectorplanner.app.store;

import dev.injectorplanner.app.store.SystemLock.Holder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;

/**
 * Held by the process that has an embedded store, for as long as it lives. The database's own lock counts as held for ten seconds after
 * a kill, and asking it takes as long; the system's is dropped at once, so that a live holder is told from one that is gone.
 */
final class InUse implements AutoCloseable {
    private static final String FILE = "in-use.lock";

    /** A command that is about to end is waited for. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final SystemLock lock;

    private InUse(SystemLock lock) {
        this.lock = lock;
    }

    /** @throws StoreException in words, where a live process has the store */
    static InUse take(Path folder, StoreSettings settings) {
        SystemLock lock = SystemLock.on(folder, FILE);
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (lock.take() == Holder.ANOTHER) {
            if (System.nanoTime() > end || !LockWait.pause()) {
                lock.close();
                throw new StoreException(StoreOpening.inUse(settings), new IOException("locked"));
            }
        }
        return new InUse(lock);
    }

    @Override
    public void close() {
        lock.close();
    }
}
