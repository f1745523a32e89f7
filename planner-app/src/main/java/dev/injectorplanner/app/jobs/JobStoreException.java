package dev.injectorplanner.app.jobs;

/** The store could not be asked. */
public final class JobStoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    JobStoreException(String message, Throwable cause) {
        super(message, cause);
    }
}
