package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.planning.FleetTuning;
import dev.injectorplanner.app.site.EngineTunings;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.replay.tune.TuningResult;
import java.time.Instant;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The engine's figures, chosen for the loaded fleet. */
@Command(
        name = "tune",
        mixinStandardHelpOptions = true,
        description = {
            "Chooses the engine's figures by replay on the loaded fleet's own learned lives, and shows what they gain.",
            "The job engine-tuning does the same every week. A figure that the site has set is held.",
            "Ctrl-C ends it; then nothing is chosen."
        })
final class TuneCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(
            names = "--fleets",
            paramLabel = "N",
            defaultValue = "4",
            description = "Fleets of the search, and as many fresh ones to confirm it, 2 or more (default: 4).")
    private int fleets;

    @Option(
            names = "--weeks",
            paramLabel = "N",
            defaultValue = "52",
            description = "Weeks of planning played, 26 or more (default: 52).")
    private int weeks;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "7",
            description = "The same seed gives the same choice (default: 7).")
    private long seed;

    @Option(names = "--on", paramLabel = "DATE", description = "The day the records are read on (default: today).")
    private @Nullable LocalDate on;

    @Option(names = "--keep", description = "Keeps what was chosen: the next plan is made with it.")
    private boolean keep;

    @Mixin
    private StoreOptions store;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        try (Application application = Application.open(store.settings());
                ReplayProgress progress = new ReplayProgress(json)) {
            FleetTuning tuning = new FleetTuning(application.planning(), application.settings());
            int threads = Math.max(1, Runtime.getRuntime().availableProcessors());
            TuningResult result = tuning.tune(
                    on == null ? LocalDate.now() : on, new FleetTuning.Extent(fleets, weeks, seed, threads), progress);
            progress.finish();
            boolean kept = keep && !result.stopped();
            if (kept) {
                Instant now = Instant.now();
                new EngineTunings(application.store().dataSource()).keep("tune " + now, now, result);
            }
            TuningPrinter printer = new TuningPrinter(
                    spec.commandLine().getOut(), application.settings().units());
            if (json) {
                printer.json(result, kept);
            } else {
                printer.print(result, kept);
            }
            return 0;
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }
}
