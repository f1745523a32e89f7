package dev.injectorplanner.app.people;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a person is here to do. An administrator keeps the program, and reads everything. */
public enum Role {
    MANAGER,
    BUYER,
    STOREMAN,
    MECHANIC,
    ADMINISTRATOR;

    /** As a person says it: {@code parts buyer}. */
    public String words() {
        return switch (this) {
            case MANAGER -> "fleet manager";
            case BUYER -> "parts buyer";
            default -> name().toLowerCase(Locale.ROOT);
        };
    }

    /** Several, in the order above: {@code fleet manager, mechanic}. */
    public static String words(Collection<Role> roles) {
        return roles.stream().sorted().map(Role::words).collect(Collectors.joining(", "));
    }

    /**
     * A role by its name in commands and forms: {@code manager}.
     *
     * @throws InvalidValueException where there is none of that name
     */
    public static Role of(String name) {
        return Arrays.stream(values())
                .filter(role -> role.name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "role", name, "is not known", "choose from manager, buyer, storeman, mechanic, administrator"));
    }
}
