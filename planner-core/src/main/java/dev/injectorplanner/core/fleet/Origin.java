package dev.injectorplanner.core.fleet;

/** Where a fitted injector came from. */
public enum Origin {
    NEW,
    REMAN
}
