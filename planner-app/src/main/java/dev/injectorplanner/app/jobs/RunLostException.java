package dev.injectorplanner.app.jobs;

/** The run was taken over meanwhile: this node was silent for longer than its lease. Nothing of it is kept. */
final class RunLostException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    RunLostException(RunKey key, int attempt) {
        super("attempt " + attempt + " of the " + key + " was taken over by another node; its results were discarded");
    }
}
