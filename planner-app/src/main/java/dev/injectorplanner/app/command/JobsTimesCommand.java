package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.JobSetting;
import dev.injectorplanner.app.wiring.JobParts;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** When the jobs run. */
@Command(name = "times", mixinStandardHelpOptions = true, description = "Lists when the jobs run, depot by depot.")
final class JobsTimesCommand extends StoreCommand {
    @Mixin
    private SettingsOption settings;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        List<JobSetting> list;
        try (Application application = open();
                JobParts jobs = JobParts.of(application, settings.jobs())) {
            list = jobs.times().list(jobs.frame().registry().kinds());
        }
        PrintWriter out = out();
        Instant now = Instant.now();
        if (json) {
            Json.print(
                    out,
                    Map.of(
                            "times",
                            list.stream()
                                    .map(setting -> JobsJsonView.of(setting, now))
                                    .toList()));
            return 0;
        }
        TextTable table = new TextTable("Job", "Depot", "Times", "Zone", "Next", "Set by");
        for (JobSetting setting : list) {
            table.row(
                    setting.kind().option(),
                    setting.depot().isEmpty() ? "all" : setting.depot(),
                    setting.times().line(),
                    setting.times().zone(),
                    setting.enabled() ? setting.times().nextAfter(now) : "by hand only",
                    setting.bySite() ? "site" : "planner default");
        }
        table.print(out);
        out.flush();
        return 0;
    }
}
