package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.PlanChange;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.units.SiteForm;
import java.time.Instant;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
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
    private CapacityOptions capacity;

    @Mixin
    private StoreOptions store;

    @Option(names = "--keep", description = "Saves the plan and puts it in force.")
    private boolean keep;

    @Option(names = "--all", description = "Prints every visit, truck and part, and lines in full.")
    private boolean all;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        boolean trying = hold.any() || capacity.any();
        if (keep && trying) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--keep: a preview cannot be kept. Fix: store pins and blocked weeks first, with hold; enter"
                            + " hours and bays in the capacity table.");
        }
        options.check();
        var holds = hold.holds();
        var extra = capacity.extra();
        Plan plan;
        PlanChange change = null;
        SiteForm form;
        try (Application application = Application.open(store.settings())) {
            form = application.settings().form();
            Policy policy = options.policy(application.planning().policy());
            if (trying) {
                var tried = application.planning().tryOut(options.today(), policy, options.depot(), holds, extra);
                plan = tried.planned().plan();
                change = tried.change();
            } else {
                Planned planned = application.planning().plan(options.today(), policy, options.depot());
                plan = planned.plan();
                if (keep) {
                    String run = "by hand " + UUID.randomUUID();
                    application.planning().keep(run, Instant.now(), planned, options.depot(), Person.here());
                }
            }
        }
        print(plan, change, form);
        return 0;
    }

    private void print(Plan plan, @Nullable PlanChange change, SiteForm form) {
        var out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, PlanJsonView.of(plan, change));
            return;
        }
        new PlanPrinter(out, form, all).print(plan);
        if (change != null) {
            new ChangePrinter(out, form).print(change);
        }
        out.flush();
    }
}
