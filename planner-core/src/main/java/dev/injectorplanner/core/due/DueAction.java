package dev.injectorplanner.core.due;

/** What a due item asks for. */
public enum DueAction {
    /** Replace the injector of the cylinder. */
    REPLACE,
    /** Test the truck's injectors; no access needed. */
    INSPECT,
    /** Do a scheduled service. */
    SERVICE
}
