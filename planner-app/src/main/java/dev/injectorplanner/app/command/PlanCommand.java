package dev.injectorplanner.app.command;

import dev.injectorplanner.app.Application;
import dev.injectorplanner.app.planning.Planning.Planned;
import java.time.Instant;
import java.util.UUID;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A plan on the terminal. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Plans: what is due and why, which visit in which week, what is missing.")
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private PlanOptions options;

    @Mixin
    private HoldOptions hold;

    @Mixin
    private StoreOptions store;

    @Option(names = "--keep", description = "Keeps the plan: it is the one in force from then on.")
    private boolean keep;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        if (keep && hold.any()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--keep: pins and refusals that are only tried cannot be kept. Mend: store them first, with hold.");
        }
        var policy = options.policy();
        var holds = hold.holds();
        Planned planned;
        Planned without;
        try (Application application = Application.open(store.settings())) {
            planned = application.planning().plan(options.today(), policy, options.depot(), holds);
            if (keep) {
                application
                        .plans()
                        .keep("by hand " + UUID.randomUUID(), options.depot(), Instant.now(), planned.plan());
            }
            without = hold.any() ? application.planning().plan(options.today(), policy, options.depot()) : planned;
        }
        var out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, PlanView.of(planned.plan()));
        } else {
            PlanPrinter printer = new PlanPrinter(out);
            printer.print(planned.plan());
            if (hold.any()) {
                printer.printChange(without.plan(), planned.plan());
            }
            out.flush();
        }
        return 0;
    }
}
