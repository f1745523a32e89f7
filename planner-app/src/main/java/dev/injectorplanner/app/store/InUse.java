package dev.injectorplanner.app.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * Held by the process that has an embedded store, for as long as it lives. The database's own lock counts as held for ten seconds after
 * a kill, and asking it takes as long; the system's is dropped at once, so that a live holder is told from one that is gone.
 */
final class InUse implements AutoCloseable {
    private static final String FILE = "in-use.lock";

    /** A command that is about to end is waited for. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final FileChannel channel;

    private InUse(FileChannel channel) {
        this.channel = channel;
    }

    /** @throws StoreException in words, where a live process has the store */
    static InUse take(Path folder, StoreSettings settings) {
        FileChannel channel = open(folder);
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!isTaken(channel, folder)) {
            if (System.nanoTime() > end || !LockWait.pause()) {
                closeQuietly(channel);
                throw new StoreException(
                        "The store in " + settings
                                + " is in use by another process. Fix: stop it (serve) first, or use its pages.",
                        new IOException("locked"));
            }
        }
        return new InUse(channel);
    }

    private static FileChannel open(Path folder) {
        try {
            return FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw StoreFailures.inWords("The store in " + folder + " cannot be opened", e);
        }
    }

    private static boolean isTaken(FileChannel channel, Path folder) {
        try {
            @Nullable FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return true; // this process has it already
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
        closeQuietly(channel);
    }
}
