package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.JobRun;
import dev.injectorplanner.app.wiring.JobParts;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the scheduled jobs did. */
@Command(
        name = "jobs",
        mixinStandardHelpOptions = true,
        description = "Lists the runs of scheduled jobs; runs one now; lists and sets their times.",
        subcommands = {JobsRunCommand.class, JobsTimesCommand.class, JobsSetCommand.class})
final class JobsCommand extends StoreCommand {
    @Mixin
    private SettingsOption settings;

    @Option(
            names = "--most",
            paramLabel = "N",
            defaultValue = "20",
            description = "How many of the newest runs (default: ${DEFAULT-VALUE}).")
    private int most;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        List<JobRun> runs;
        try (Application application = open();
                JobParts jobs = JobParts.of(application, settings.jobs())) {
            runs = jobs.frame().runs().listNewest(Math.max(1, most));
        }
        PrintWriter out = out();
        if (json) {
            Json.print(out, Map.of("runs", runs.stream().map(JobsJsonView::of).toList()));
        } else {
            print(out, runs);
        }
        return 0;
    }

    private static void print(PrintWriter out, List<JobRun> runs) {
        TextTable table = new TextTable("Due", "Job", "Depot", "Outcome", ">Attempt", "Result, or what went wrong");
        for (JobRun run : runs) {
            table.row(
                    run.key().due(),
                    run.key().kind().option() + (run.byHand() ? " (by hand)" : ""),
                    run.key().findDepot().orElse("all"),
                    run.outcome().words(),
                    run.attempt(),
                    run.error() == null ? run.counts() : run.error());
        }
        if (table.isEmpty()) {
            out.println("No job has run yet. Fix: start serve, or run one now: jobs run nightly-plan --depot D.");
        } else {
            table.print(out);
        }
        out.flush();
    }
}
