package dev.injectorplanner.app.people;

import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A person who signs in, without the password.
 *
 * @param id number in the store
 * @param name the name the person signs in with
 * @param roles what the person may do
 * @param depot the one depot the person sees, or null for all
 * @param stamp drawn again with every new password and when disabled: what was signed in under an older one has ended
 * @param mustChange whether the password is to be changed before anything else
 * @param disabled whether the person is kept out
 * @param failedAttempts wrong passwords since the last sign-in, >= 0
 * @param signedInAt the last sign-in, or null for none yet
 */
public record Account(
        long id,
        String name,
        Set<Role> roles,
        @Nullable String depot,
        long stamp,
        boolean mustChange,
        boolean disabled,
        int failedAttempts,
        @Nullable Instant signedInAt) {
    public Account {
        roles = Set.copyOf(roles);
    }

    /** How the pages know this person. */
    public Viewer viewer() {
        return new Viewer(name, roles, depot);
    }

    /** What the person may do, in words for lists and the audit trail. */
    public String words() {
        return Role.words(roles) + ", " + (depot == null ? "all depots" : depot) + (disabled ? ", disabled" : "");
    }
}
