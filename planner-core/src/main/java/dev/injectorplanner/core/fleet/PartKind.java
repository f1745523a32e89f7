package dev.injectorplanner.core.fleet;

/** What a part is. */
public enum PartKind {
    INJECTOR,
    SEAL,
    LINE,
    FITTING,
    FILTER,
    COOLANT,
    CLEANER,
    OTHER
}
