package dev.injectorplanner.core.check;

/**
 * An error that people can fix: its message says what is wrong, where, and how to fix it, and needs no stack trace. Every other
 * error is a fault of the program.
 */
public interface UserError {
    /** Whether an error is one of these. */
    static boolean is(Throwable error) {
        return error instanceof UserError;
    }
}
