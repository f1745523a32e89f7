package dev.injectorplanner.app.web.office;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.core.check.UserError;
import java.util.List;
import java.util.stream.Collectors;

/** Who may change what. */
public final class Permissions {
    private Permissions() {}

    /** @throws NotAllowedException where the person has none of these roles */
    public static void require(Viewer viewer, Role... roles) {
        if (!viewer.is(roles)) {
            throw new NotAllowedException("This is for "
                    + List.of(roles).stream().map(Role::words).collect(Collectors.joining(" or "))
                    + " to do. Fix: ask one, or sign in as one.");
        }
    }

    /**
     * @param what what concerns every depot, for the sentence
     * @throws NotAllowedException where the person sees one depot only
     */
    public static void requireAllDepots(Viewer viewer, String what) {
        if (viewer.depot() != null) {
            throw new NotAllowedException(what + " concern all depots, and you are limited to " + viewer.depot()
                    + ". Fix: ask someone with access to all depots.");
        }
    }

    /** Somebody may not do that. */
    public static final class NotAllowedException extends RuntimeException implements UserError {
        private static final long serialVersionUID = 1L;

        NotAllowedException(String message) {
            super(message);
        }
    }
}
