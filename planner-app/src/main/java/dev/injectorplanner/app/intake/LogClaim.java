package dev.injectorplanner.app.intake;

import org.jspecify.annotations.Nullable;

/**
 * What whoever sends a vehicle log says of it.
 *
 * @param truck the truck it belongs to, or null where table, file name or VIN tell
 * @param depot the one depot whose trucks may be named, or null for all
 */
public record LogClaim(@Nullable String truck, @Nullable String depot) {
    /** Says nothing, may do all. */
    public static final LogClaim NONE = new LogClaim(null, null);
}
