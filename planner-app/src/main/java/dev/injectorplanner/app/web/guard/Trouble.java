package dev.injectorplanner.app.web.guard;

import dev.injectorplanner.app.store.StoreFailures;
import dev.injectorplanner.app.store.StoreFailures.Cause;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What went wrong with a request, for its error page: a reference that the log has too, and what an operator can fix.
 *
 * @param reference eight characters
 * @param cause what is wrong with the store's place, or null where it is something else
 */
public record Trouble(String reference, @Nullable Cause cause) {
    private static final String ATTRIBUTE = Trouble.class.getName();
    private static final int CHARACTERS = 8;

    static Trouble of(Throwable thrown) {
        return of(StoreFailures.findCause(thrown).orElse(null));
    }

    static Trouble of(@Nullable Cause cause) {
        return new Trouble(UUID.randomUUID().toString().substring(0, CHARACTERS), cause);
    }

    void putOn(HttpServletRequest request) {
        request.setAttribute(ATTRIBUTE, this);
    }

    /** The trouble of a request that is being answered by an error page. */
    public static Optional<Trouble> findOn(HttpServletRequest request) {
        return request.getAttribute(ATTRIBUTE) instanceof Trouble trouble ? Optional.of(trouble) : Optional.empty();
    }
}
