package dev.injectorplanner.app.security;

import dev.injectorplanner.app.people.Account;
import java.io.Serializable;
import java.time.Instant;

/**
 * What a session remembers of who signed in; the rest is read again at every request.
 *
 * @param id the person's number
 * @param name the person's name
 * @param stamp the person's stamp at that time
 * @param byProvider whether a provider vouched for the person: the password here was not asked for
 * @param until when the person must sign in again
 */
record SignedIn(long id, String name, long stamp, boolean byProvider, Instant until) implements Serializable {
    static SignedIn of(Account account, Instant until) {
        return new SignedIn(account.id(), account.name(), account.stamp(), false, until);
    }

    /** Through a provider. */
    static SignedIn through(Account account, Instant until) {
        return new SignedIn(account.id(), account.name(), account.stamp(), true, until);
    }

    /** Whether it still holds. */
    boolean isStill(Account account, Instant now) {
        return account.stamp() == stamp && !account.disabled() && now.isBefore(until);
    }
}
