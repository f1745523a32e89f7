package dev.injectorplanner.app.jobs;

import java.util.function.Consumer;

/** Starts again what failed and waits, and what a lost node left behind. */
public final class Upkeep {
    private final JobRuns runs;
    private final JobRegistry registry;
    private final Consumer<JobRun> starter;

    /** @param starter starts a run, soon and on any node; does nothing where that is under way */
    public Upkeep(JobRuns runs, JobRegistry registry, Consumer<JobRun> starter) {
        this.runs = runs;
        this.registry = registry;
        this.starter = starter;
    }

    public void once() {
        runs.listWaiting().stream()
                .filter(run -> registry.find(run.key().kind()).isPresent())
                .forEach(starter);
    }
}
