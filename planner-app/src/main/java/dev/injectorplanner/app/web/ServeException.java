package dev.injectorplanner.app.web;

import dev.injectorplanner.core.check.UserError;

/** The pages cannot be served; the message is for the person who has to fix it. */
public final class ServeException extends RuntimeException implements UserError {
    private static final long serialVersionUID = 1L;

    ServeException(String message, Throwable cause) {
        super(message, cause);
    }
}
