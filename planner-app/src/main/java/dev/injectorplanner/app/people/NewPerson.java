package dev.injectorplanner.app.people;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A person to be added, or what one shall be from now on.
 *
 * @param name the name to sign in with, 2 to 60 letters, digits and . _ @ - without spaces
 * @param roles what the person may do, at least one
 * @param depot the one depot the person sees, or null for all; one who is a mechanic only has one, an administrator none
 */
public record NewPerson(
        String name, Set<Role> roles, @Nullable String depot) {
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._@-]{1,59}");

    public NewPerson {
        if (!NAME.matcher(name).matches()) {
            throw new InvalidValueException(
                    "name",
                    name,
                    "is no name to sign in with",
                    "take 2 to 60 letters, digits and . _ @ - without spaces");
        }
        if (roles.isEmpty()) {
            throw new InvalidValueException(
                    "roles", "", "are missing", "choose among manager, buyer, mechanic, administrator");
        }
        if (roles.equals(Set.of(Role.MECHANIC)) && depot == null) {
            throw new InvalidValueException("depot", "", "is missing", "say at which depot the mechanic works");
        }
        if (roles.contains(Role.ADMINISTRATOR) && depot != null) {
            throw new InvalidValueException(
                    "depot", depot, "is not for an administrator, who keeps all depots", "leave it out");
        }
        roles = Set.copyOf(roles);
    }
}
