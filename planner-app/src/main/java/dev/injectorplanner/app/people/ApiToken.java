package dev.injectorplanner.app.people;

import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A token without its secret.
 *
 * @param id number in the store
 * @param name what it is for
 * @param scopes what it lets a program do
 * @param depot the one depot it is for, or null for all
 * @param madeBy who made it
 * @param madeAt when it was made
 * @param expiresAt when it ends by itself
 * @param usedAt when it was last used, to the minute, or null
 * @param revokedAt when it was closed, or null
 */
public record ApiToken(
        long id,
        String name,
        Set<Scope> scopes,
        @Nullable String depot,
        String madeBy,
        Instant madeAt,
        Instant expiresAt,
        @Nullable Instant usedAt,
        @Nullable Instant revokedAt) {
    public ApiToken {
        scopes = Set.copyOf(scopes);
    }

    /** Whether it may still be used. */
    public boolean isOpen(Instant now) {
        return revokedAt == null && now.isBefore(expiresAt);
    }

    /** How the audit trail names what it did. */
    public String who() {
        return "token " + id + " (" + name + ")";
    }
}
