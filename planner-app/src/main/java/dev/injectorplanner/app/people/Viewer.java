package dev.injectorplanner.app.people;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who looks at a page.
 *
 * @param name the name the person signs in with
 * @param roles what the person may do, none for nobody
 * @param depot the one depot the person sees, or null for all
 */
public record Viewer(String name, Set<Role> roles, @Nullable String depot) {
    /** Where nobody signed in: may do nothing. */
    public static final Viewer NOBODY = new Viewer("nobody", Set.of(), null);

    public Viewer {
        roles = Set.copyOf(roles);
    }

    /** Whether the person has one of these roles. */
    public boolean is(Role... any) {
        return List.of(any).stream().anyMatch(roles::contains);
    }

    /** Whether the person may see a depot. */
    public boolean sees(String other) {
        return depot == null || depot.equals(other);
    }
}
