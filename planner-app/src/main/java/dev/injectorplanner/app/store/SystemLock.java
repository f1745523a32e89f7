package dev.injectorplanner.app.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** The system's lock on a file of a store's folder: dropped at once where its process is killed. */
final class SystemLock implements AutoCloseable {
    private final Path folder;
    private final FileChannel channel;

    /** Who has the lock. */
    enum Holder {
        /** This object, from now on. */
        US,
        /** Something else in this process. */
        THIS_PROCESS,
        ANOTHER
    }

    private SystemLock(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /** @throws StoreException in words, where the folder takes no file */
    static SystemLock on(Path folder, String file) {
        try {
            return new SystemLock(
                    folder,
                    FileChannel.open(folder.resolve(file), StandardOpenOption.CREATE, StandardOpenOption.WRITE));
        } catch (IOException e) {
            throw StoreFailures.inWords("The store in " + folder + " cannot be opened", e);
        }
    }

    /** Takes the lock if nobody has it; says who has it now. */
    Holder take() {
        try {
            @Nullable FileLock lock = channel.tryLock();
            return lock == null ? Holder.ANOTHER : Holder.US;
        } catch (OverlappingFileLockException e) {
            return Holder.THIS_PROCESS;
        } catch (IOException e) {
            close();
            throw StoreFailures.inWords("The store in " + folder + " cannot be opened", e);
        }
    }

    @Override
    public void close() {
        try {
            channel.close(); // gives the lock up as well
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
