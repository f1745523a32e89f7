package dev.injectorplanner.app.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * One process at a time opens an embedded store, so that nobody opens it between its upgrade and its renames. The system
 * drops the lock of a process that was killed at once.
 */
final class FolderTurn implements AutoCloseable {
    private static final String FILE = "opening.lock";

    private final FileChannel channel;
    private final FileLock lock;

    private FolderTurn(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Takes the turn, waiting for it as long as for the store's own lock.
     *
     * @throws StoreException in words, where another process keeps it or the folder takes no file
     */
    static FolderTurn take(Path folder) {
        FileChannel channel = open(folder);
        LockWait wait = LockWait.begin(System::nanoTime);
        FileLock lock = tryLock(channel, folder);
        while (lock == null && wait.hasTimeForAnother() && LockWait.pause()) {
            lock = tryLock(channel, folder);
        }
        if (lock == null) {
            closeQuietly(channel);
            throw new StoreException(
                    "The store in " + folder
                            + " is being opened by another process. Fix: wait for that one, or stop it.",
                    new IOException("locked"));
        }
        return new FolderTurn(channel, lock);
    }

    private static FileChannel open(Path folder) {
        try {
            return FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw StoreFailures.inWords("The store in " + folder + " cannot be opened", e);
        }
    }

    private static @Nullable FileLock tryLock(FileChannel channel, Path folder) {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null; // held within this process
        } catch (IOException e) {
            closeQuietly(channel);
            throw StoreFailures.inWords("The store in " + folder + " cannot be opened", e);
        }
    }

    private static void closeQuietly(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        try (channel) {
            lock.release();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
