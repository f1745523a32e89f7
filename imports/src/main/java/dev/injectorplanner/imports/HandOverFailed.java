package dev.injectorplanner.imports;

/** Carries what went wrong behind the reading, such as in the receiver, past those who would take it for a bad file. */
final class HandOverFailed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final RuntimeException failure;

    HandOverFailed(RuntimeException failure) {
        super(failure);
        this.failure = failure;
    }

    RuntimeException failure() {
        return failure;
    }
}
