package dev.injectorplanner.app.store;

import dev.injectorplanner.app.store.SystemLock.Holder;
import java.io.IOException;
import java.nio.file.Path;

/**
 * One process at a time opens an embedded store, so that nobody opens it between its upgrade and its renames. The system
 * drops the lock of a process that was killed at once.
 */
final class FolderTurn implements AutoCloseable {
    private static final String FILE = "opening.lock";

    private final SystemLock lock;

    private FolderTurn(SystemLock lock) {
        this.lock = lock;
    }

    /**
     * Takes the turn, waiting for it as long as for the store's own lock.
     *
     * @throws StoreException in words, where another process keeps it or the folder takes no file
     */
    static FolderTurn take(Path folder) {
        SystemLock lock = SystemLock.on(folder, FILE);
        LockWait wait = LockWait.begin(System::nanoTime);
        boolean taken = lock.take() == Holder.US;
        while (!taken && wait.hasTimeForAnother() && LockWait.pause()) {
            taken = lock.take() == Holder.US;
        }
        if (!taken) {
            lock.close();
            throw new StoreException(
                    "The store in " + folder
                            + " is being opened by another process. Fix: wait for that one, or stop it.",
                    new IOException("locked"));
        }
        return new FolderTurn(lock);
    }

    @Override
    public void close() {
        lock.close();
    }
}
