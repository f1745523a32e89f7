package dev.injectorplanner.imports.file;

/** Carries what went wrong behind the reading, such as in the receiver, past those who would take it for a bad file. */
public final class HandOverFailed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final RuntimeException failure;

    public HandOverFailed(RuntimeException failure) {
        super(failure);
        this.failure = failure;
    }

    public RuntimeException failure() {
        return failure;
    }
}
