package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.RunOutcome;
import dev.injectorplanner.app.wiring.JobParts;
import dev.injectorplanner.core.check.InvalidValueException;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One job, now, in this process. */
@Command(name = "run", mixinStandardHelpOptions = true, description = "Runs a job now, and waits for it.")
final class JobsRunCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "JOB", description = "The job, such as nightly-plan, life-refit, backup.")
    private String job;

    @Option(
            names = "--depot",
            paramLabel = "D",
            defaultValue = "",
            description = "The depot, for jobs that run for one.")
    private String depot;

    @Mixin
    private StoreOptions store;

    @Mixin
    private SettingsOption settings;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        JobKind kind = JobKind.of(job);
        RunKey key = new RunKey(kind, depot, Instant.now());
        JobRun run;
        try (Application application = Application.open(store.settings());
                JobParts jobs = JobParts.of(application, settings.jobs())) {
            jobs.times().checkDepot(kind, depot);
            if (jobs.frame().registry().find(kind).isEmpty()) {
                throw new InvalidValueException(
                        "job",
                        job,
                        "is not set up for this store",
                        "choose from "
                                + jobs.frame().registry().kinds().stream()
                                        .map(JobKind::option)
                                        .toList());
            }
            jobs.frame().run(key, true, 0);
            AuditNotes.change(application, "run a job by hand", kind.option() + " " + depot, "", "due " + key.due());
            run = jobs.frame().runs().find(key).orElseThrow();
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, JobsJsonView.of(run));
        } else {
            out.println(run.key() + ": " + run.outcome().words() + ": "
                    + (run.error() == null ? run.counts() : run.error()));
            out.flush();
        }
        return run.outcome() == RunOutcome.DONE ? 0 : PlannerCommand.REFUSED;
    }
}
