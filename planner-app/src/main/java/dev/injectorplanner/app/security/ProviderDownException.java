package dev.injectorplanner.app.security;

import org.springframework.security.core.AuthenticationException;

/** The provider cannot be asked; the message is for the log. */
final class ProviderDownException extends AuthenticationException {
    private static final long serialVersionUID = 1L;

    ProviderDownException(String message) {
        super(message);
    }

    ProviderDownException(String message, Throwable cause) {
        super(message, cause);
    }
}
