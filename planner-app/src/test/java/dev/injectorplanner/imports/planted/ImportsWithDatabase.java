package dev.injectorplanner.imports.planted;

import java.sql.Date;

/** Breaks a rule on purpose: knows the database. */
public final class ImportsWithDatabase {
    Date today() {
        return Date.valueOf("2026-03-02");
    }
}
