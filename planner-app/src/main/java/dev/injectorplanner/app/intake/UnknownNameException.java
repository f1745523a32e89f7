package dev.injectorplanner.app.intake;

import dev.injectorplanner.core.check.InvalidValueException;

/** A row refers to something that is not there, or that was refused itself. */
final class UnknownNameException extends InvalidValueException {
    private static final long serialVersionUID = 1L;

    private final Class<?> type;

    /** @param type record of the table that should hold the name */
    UnknownNameException(String field, Object name, Class<?> type, String fix) {
        super(field, name, "is not known", fix);
        this.type = type;
    }

    Class<?> type() {
        return type;
    }
}
