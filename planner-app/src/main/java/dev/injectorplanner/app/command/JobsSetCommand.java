package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.DepotZones;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobTimes;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets when a job runs. */
@Command(
        name = "set",
        mixinStandardHelpOptions = true,
        description = "Sets when a job runs. A server that is running follows within half a minute.")
final class JobsSetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "JOB", description = "The job, such as nightly-plan.")
    private String job;

    @Option(names = "--depot", paramLabel = "D", defaultValue = "", description = "One depot (default: all).")
    private String depot;

    @ArgGroup(multiplicity = "1")
    private Choice choice = new Choice();

    private static final class Choice {
        @Option(
                names = "--at",
                paramLabel = "LINE",
                description = "Minute, hour, day of the month, month, day of the week, as in crontab: \"30 2 * * *\".")
        private @Nullable String at;

        @Option(names = "--off", description = "Run by hand only.")
        private boolean off;

        @Option(names = "--default", description = "Back to the setting for all depots, or to the planner default.")
        private boolean back;
    }

    @Mixin
    private StoreOptions store;

    @Override
    public Integer call() {
        JobKind kind = JobKind.of(job);
        try (Application application = Application.open(store.settings())) {
            var pool = application.store().dataSource();
            JobTimes times = new JobTimes(pool, new DepotZones(pool));
            String line = choice.at;
            if (line != null) {
                times.set(kind, depot, line, true);
            } else if (choice.off) {
                times.set(kind, depot, kind.defaultTimes(), false);
            } else {
                times.reset(kind, depot);
            }
            String after = line != null ? line : choice.off ? "by hand only" : "as by default";
            AuditNotes.change(application, "set a job's times", kind.option() + " " + depot, "", after);
        }
        spec.commandLine()
                .getOut()
                .println("Set: " + kind.words() + (depot.isEmpty() ? "" : " of depot " + depot) + ".");
        spec.commandLine().getOut().flush();
        return 0;
    }
}
