package dev.injectorplanner.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Keeps a reserve free on the embedded store's disk. On a disk that is quite full the embedded database acknowledges commits
 * that never reach its log, so writing stops while there is still room for what is under way.
 */
final class DiskRoom {
    /** What must stay free, in bytes: several times the largest batch of a load. */
    static final long RESERVE_BYTES = 32L << 20;

    private final Path folder;

    DiskRoom(Path folder) {
        this.folder = folder;
    }

    /** @throws StoreException where less than the reserve is free */
    void require() {
        long free = freeBytes();
        if (free < RESERVE_BYTES) {
            throw new StoreException(
                    "The disk is full: " + (free >> 20) + " MB are free in " + folder + ", " + (RESERVE_BYTES >> 20)
                            + " MB must stay free. Nothing was stored. Fix: free space on that disk, then try again.",
                    new IOException("No space left on device"));
        }
    }

    private long freeBytes() {
        try {
            return Files.getFileStore(folder).getUsableSpace();
        } catch (IOException e) {
            return Long.MAX_VALUE; // a disk that says nothing is not called full
        }
    }
}
