package dev.injectorplanner.app.store;

import dev.injectorplanner.core.check.UserError;

/** The store cannot be opened or used; the message is for the person who has to fix it. */
public final class StoreException extends RuntimeException implements UserError {
    private static final long serialVersionUID = 1L;

    StoreException(String message, Throwable cause) {
        super(message, cause);
    }
}
