package dev.injectorplanner.app.security;

import java.time.Duration;
import org.springframework.security.core.AuthenticationException;

/** Too many tries to sign in: how long to wait. */
final class TooManyTriesException extends AuthenticationException {
    private static final long serialVersionUID = 1L;

    private final Duration wait;

    TooManyTriesException(Duration wait) {
        super("too many tries, wait " + wait);
        this.wait = wait;
    }

    Duration pause() {
        return wait;
    }
}
