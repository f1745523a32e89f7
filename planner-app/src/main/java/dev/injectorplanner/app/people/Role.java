package dev.injectorplanner.app.people;

import java.util.Locale;

/** What a person is here to do. An administrator keeps the program, and reads everything. */
public enum Role {
    MANAGER,
    BUYER,
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
}
