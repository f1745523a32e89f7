package dev.injectorplanner.core.finding;

/** What a finding asks for. */
public enum Action {
    /** Replace the injector of the cylinder. */
    REPLACE,
    /** Test the truck's injectors; no access needed. */
    INSPECT,
    /** Do an interval task. */
    SERVICE
}
