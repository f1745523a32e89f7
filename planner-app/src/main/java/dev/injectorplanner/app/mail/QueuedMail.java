package dev.injectorplanner.app.mail;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A mail of the outbox, without its text.
 *
 * @param id its number
 * @param recipient whom it is for
 * @param subject its subject
 * @param state where it stands
 * @param attempts how often it was tried
 * @param queuedAt when it was put there
 * @param nextAt when it is tried next, where it waits
 * @param sentAt when the server took it, or null
 * @param lastError what the last try met, or null
 */
public record QueuedMail(
        long id,
        String recipient,
        String subject,
        State state,
        int attempts,
        Instant queuedAt,
        Instant nextAt,
        @Nullable Instant sentAt,
        @Nullable String lastError) {
    /** Where a mail stands. */
    public enum State {
        WAITING,
        /** A node is at it; if that one dies, another takes it up when its time has lapsed. */
        SENDING,
        SENT,
        /** The server will not have it for this recipient: trying again is of no use. */
        REFUSED
    }
}
