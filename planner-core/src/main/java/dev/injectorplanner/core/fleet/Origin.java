package dev.injectorplanner.core.fleet;

import java.util.List;

/** How an injector came. */
public enum Origin {
    NEW,
    REMAN,
    /** Nobody knows: fitted before the records began. It counts as the origin with the shorter life. */
    UNKNOWN;

    /** Those of which a life can be learned. */
    public static final List<Origin> KNOWN = List.of(NEW, REMAN);
}
