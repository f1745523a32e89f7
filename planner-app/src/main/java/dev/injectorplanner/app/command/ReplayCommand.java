package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.Replay;
import dev.injectorplanner.core.replay.ReplayRequest;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper;
import dev.injectorplanner.core.replay.own.OwnFleet;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Years of made-up fleets under several policies. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        description = {
            "Simulates years of a fleet under several policies, the planner among them, and compares what they cost.",
            "Simple rules are found by search on the very fleets that they are judged on; a clairvoyant shows how far the"
                    + " best is away.",
            "With --data or --database the loaded fleet's own tables, usage and learned lives are played.",
            "Ctrl-C ends it at the next step and prints what was finished."
        })
final class ReplayCommand implements Callable<Integer> {
    private static final String LIST = "list";
    private static final SearchLimits LIMITS = new SearchLimits(2, 5e-4, 1, 1);

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--scenario",
            paramLabel = "NAME",
            description = "A named scenario, or list to see them (default: mixed).")
    private @Nullable String scenario;

    @Option(names = "--fleets", paramLabel = "N", defaultValue = "8", description = "Fleets (default: 8).")
    private int fleets;

    @Option(names = "--trucks", paramLabel = "N", description = "Trucks of each (default: the scenario's).")
    private @Nullable Integer trucks;

    @Option(names = "--years", paramLabel = "N", defaultValue = "2", description = "Years of planning (default: 2).")
    private int years;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "7",
            description = "The same seed gives the same figures (default: 7).")
    private long seed;

    @Option(names = "--rules-only", description = "Leaves the planner out: the simple rules take seconds.")
    private boolean rulesOnly;

    @Mixin
    private PlanOptions options;

    @Mixin
    private StoreOptions store;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    private record Asked(Scenario scenario, Policy policy, SiteUnits units) {}

    @Override
    public Integer call() {
        if (LIST.equals(scenario)) {
            new ReplayPrinter(spec.commandLine().getOut(), SiteUnits.METRIC).list(Scenarios.list(), json);
            return 0;
        }
        options.check();
        Asked asked = asked();
        ReplayRequest request = request(asked);
        try (ReplayProgress progress = new ReplayProgress(json)) {
            ReplayResult result = Replay.run(request, new Planner(new ExactScheduler(LIMITS)), progress);
            progress.finish();
            ReplayPrinter printer = new ReplayPrinter(spec.commandLine().getOut(), asked.units());
            if (json) {
                printer.json(result);
            } else {
                printer.print(result);
            }
        }
        return 0;
    }

    private Asked asked() {
        if (!store.isGiven()) {
            Scenario named = Scenarios.getScenario(scenario == null ? "mixed" : scenario);
            return new Asked(named, options.policy(Policy.standard()), SiteUnits.METRIC);
        }
        if (scenario != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Both a scenario and a store are named. Fix: leave out --scenario to play the loaded fleet.");
        }
        try (Application application = Application.open(store.settings())) {
            Policy policy = options.policy(application.planning().policy());
            var planned = application.planning().plan(options.today(), policy, options.depot());
            return new Asked(
                    OwnFleet.scenario(planned.fleet(), planned.plan()),
                    policy,
                    application.settings().units());
        }
    }

    private ReplayRequest request(Asked asked) {
        try {
            Scenario sized =
                    trucks == null ? asked.scenario() : asked.scenario().withTrucks(trucks);
            List<PlannerKeeper.Use> planners =
                    rulesOnly ? List.of() : List.of(PlannerKeeper.Use.standard(asked.policy()));
            int threads = Math.max(1, Runtime.getRuntime().availableProcessors());
            return new ReplayRequest(sized, fleets, years, seed, planners, threads);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), "--" + e.getMessage(), e);
        }
    }
}
