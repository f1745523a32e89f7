package dev.injectorplanner.imports.cell;

/** Which of day and month stands first in dates such as 03/04/2026. */
public enum DateOrder {
    /** Nobody said: a date that can be read two ways is refused. */
    UNSTATED,
    /** 03/04/2026 is 3 April. */
    DAY_FIRST,
    /** 03/04/2026 is 4 March. */
    MONTH_FIRST
}
