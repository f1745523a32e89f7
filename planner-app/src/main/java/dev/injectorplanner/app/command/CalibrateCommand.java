package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.planning.FleetCalibration;
import dev.injectorplanner.app.site.KeptCalibrations;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
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

/** The planning figures, chosen for the loaded fleet. */
@Command(
        name = "calibrate",
        mixinStandardHelpOptions = true,
        description = {
            "Chooses the planning figures by replay on the loaded fleet's own learned lives, and shows what they gain.",
            "The job calibration does the same every week. A figure that the site has set is left alone. Of a fleet above 1,000 trucks"
                    + " the largest depot is played.",
            "Ctrl-C ends it; then nothing is chosen."
        })
final class CalibrateCommand implements Callable<Integer> {
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
            FleetCalibration fleet = new FleetCalibration(application.planning(), application.settings());
            int threads = Math.max(1, Runtime.getRuntime().availableProcessors());
            CalibrationResult result = fleet.calibrate(
                    on == null ? LocalDate.now() : on,
                    new FleetCalibration.Extent(fleets, weeks, seed, threads),
                    progress);
            progress.finish();
            boolean kept = keep && !result.stopped();
            if (kept) {
                Instant now = Instant.now();
                new KeptCalibrations(application.store().dataSource())
                        .keep(
                                "calibrate " + now,
                                now,
                                result,
                                application.settings().setFigures(),
                                Person.here());
            }
            CalibrationPrinter printer = new CalibrationPrinter(
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
