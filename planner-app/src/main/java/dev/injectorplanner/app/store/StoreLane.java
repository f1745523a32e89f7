package dev.injectorplanner.app.store;

import java.io.IOException;

/** Which of the store's pools a thread takes its connections from: reading pages have one of their own. */
public final class StoreLane {
    private static final ThreadLocal<Boolean> READING = ThreadLocal.withInitial(() -> false);

    private StoreLane() {}

    /** Work that may fail as a request may. */
    public interface Work<E extends Exception> {
        void run() throws IOException, E;
    }

    /** Runs work of a reader, which waits for no writer. */
    public static <E extends Exception> void reading(Work<E> work) throws IOException, E {
        boolean before = READING.get();
        READING.set(true);
        try {
            work.run();
        } finally {
            READING.set(before);
        }
    }

    static boolean isReading() {
        return READING.get();
    }
}
