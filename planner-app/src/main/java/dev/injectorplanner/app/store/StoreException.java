package dev.injectorplanner.app.store;

/** The store cannot be opened or used; the message is for the person who has to fix it. */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    StoreException(String message, Throwable cause) {
        super(message, cause);
    }
}
