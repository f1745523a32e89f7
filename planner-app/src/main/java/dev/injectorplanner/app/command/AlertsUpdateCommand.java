package dev.injectorplanner.app.command;

import dev.injectorplanner.app.alert.AlertCounts;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the nightly job does, by hand. */
@Command(name = "update", mixinStandardHelpOptions = true, description = "Plans, and updates the alerts from the plan.")
final class AlertsUpdateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private PlanOptions options;

    @Mixin
    private StoreOptions store;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        options.check();
        AlertCounts counts;
        try (Application application = Application.open(store.settings())) {
            var planned = application
                    .planning()
                    .plan(options.today(), options.policy(application.planning().policy()), options.depot());
            counts = new Alerts(application.store().dataSource()).update(planned, Instant.now(), Person.here());
        }
        var out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, counts);
        } else {
            out.printf(
                    "Alerts: %,d new, %,d planned, %,d lost their visit, %,d back from snooze, %,d cleared, %,d"
                            + " updated, %,d unchanged%n",
                    counts.raised(),
                    counts.planned(),
                    counts.unplanned(),
                    counts.back(),
                    counts.cleared(),
                    counts.refreshed(),
                    counts.unchanged());
            out.flush();
        }
        return 0;
    }
}
