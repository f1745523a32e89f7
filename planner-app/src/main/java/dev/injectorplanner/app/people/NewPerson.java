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
                    "cannot be used as a sign-in name",
                    "use 2 to 60 letters, digits and . _ @ - without spaces");
        }
        if (roles.isEmpty()) {
            throw new InvalidValueException(
                    "roles", "", "are missing", "choose from manager, buyer, mechanic, administrator");
        }
        if (roles.equals(Set.of(Role.MECHANIC)) && depot == null) {
            throw new InvalidValueException("depot", "", "is missing", "choose the mechanic's depot");
        }
        if (roles.contains(Role.ADMINISTRATOR) && depot != null) {
            throw new InvalidValueException(
                    "depot", depot, "cannot be set for an administrator, who has all depots", "leave it out");
        }
        roles = Set.copyOf(roles);
    }
}
