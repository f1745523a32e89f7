package dev.injectorplanner.app.jobs;

/** The work of a job. Runs again with the same key after a failure or a lost node, so it must bear that. */
@FunctionalInterface
public interface JobTask {
    /**
     * Does the work and says what came of it. What it changes in the store should go into {@link TaskResult#effect()}:
     * the frame writes that together with the end of the run, so that it happens exactly once.
     *
     * @throws Exception where it fails; it is tried again later
     */
    TaskResult run(JobContext context) throws Exception;

    /** Whether a run that nobody asked for would do anything; where not, there is no run and no record of one. */
    default boolean isWorthwhile(RunKey key) {
        return true;
    }
}
