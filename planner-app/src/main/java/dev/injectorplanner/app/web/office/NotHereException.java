package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.check.UserError;

/** What an address names is not there, or not for this person to see. */
public final class NotHereException extends RuntimeException implements UserError {
    private static final long serialVersionUID = 1L;

    /** @param message what, and what to do, in a sentence */
    public NotHereException(String message) {
        super(message);
    }
}
