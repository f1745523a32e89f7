package dev.injectorplanner.core.fleet;

/** What was found when an injector came out. */
public enum Found {
    FAILED,
    WORN,
    HEALTHY,
    UNKNOWN
}
