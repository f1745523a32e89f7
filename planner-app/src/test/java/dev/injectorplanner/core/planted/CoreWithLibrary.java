package dev.injectorplanner.core.planted;

import org.hibernate.Hibernate;

/** Breaks a rule on purpose: knows a framework. */
public final class CoreWithLibrary {
    boolean there(Object row) {
        return Hibernate.isInitialized(row);
    }
}
