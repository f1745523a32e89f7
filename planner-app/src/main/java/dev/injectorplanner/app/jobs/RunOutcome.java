package dev.injectorplanner.app.jobs;

/** How a run stands. */
public enum RunOutcome {
    RUNNING("running"),
    DONE("done"),
    FAILED("failed, will be retried"),
    GIVEN_UP("failed"),
    TOO_LATE("missed, too late to catch up");

    private final String words;

    RunOutcome(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
