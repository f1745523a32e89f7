package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.replay.outlook.OutlookMaker;
import dev.injectorplanner.core.replay.outlook.OutlookRequest;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.outlook.OutlookWorkbook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Months ahead. */
@Command(
        name = "outlook",
        mixinStandardHelpOptions = true,
        description = {
            "Parts, hours, coolant, money and failures by month, with bands that eight runs in ten stay within.",
            "The fleet is played forward from today many times: its plan is carried out, and rules of replacement chosen on"
                    + " its own learned lives go on after the plan's last week.",
            "Ctrl-C ends it at the next step and prints what was finished."
        })
final class OutlookCommand implements Callable<Integer> {
    private static final long SEED = 1;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--months",
            paramLabel = "N",
            defaultValue = "12",
            description = "Months ahead, 1 to 60 (default: 12).")
    private int months;

    @Option(names = "--runs", paramLabel = "N", defaultValue = "200", description = "Runs, 20 to 10000 (default: 200).")
    private int runs;

    @Mixin
    private PlanOptions options;

    @Mixin
    private StoreOptions store;

    @Option(
            names = "--workbook",
            paramLabel = "FILE",
            description = "Writes it as a workbook too, such as outlook.xlsx.")
    private @Nullable Path workbook;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        options.check();
        OutlookRequest request = request();
        try (ReplayProgress progress = new ReplayProgress(json)) {
            Outlook outlook;
            FleetSnapshot fleet;
            SiteForm form;
            try (Application application = Application.open(store.settings())) {
                Policy policy = options.policy(application.planning().policy());
                var planned = application.planning().plan(options.today(), policy, options.depot());
                fleet = planned.fleet();
                form = application.settings().form();
                outlook = OutlookMaker.make(fleet, planned.plan(), request, progress);
            }
            progress.finish();
            if (workbook != null && !written(workbook, new OutlookWorkbook(fleet, outlook), form)) {
                return PlannerCommand.REFUSED;
            }
            OutlookPrinter printer = new OutlookPrinter(spec.commandLine().getOut(), form);
            if (json) {
                printer.json(outlook);
            } else {
                printer.print(outlook);
            }
        }
        return 0;
    }

    private boolean written(Path file, OutlookWorkbook book, SiteForm form) {
        try (OutputStream out = Files.newOutputStream(file)) {
            book.write(out, form);
            return true;
        } catch (IOException e) {
            spec.commandLine()
                    .getErr()
                    .println(file + " cannot be written (" + e.getMessage()
                            + "). Fix: close it if it is open elsewhere, or name another file with --workbook.");
            return false;
        }
    }

    private OutlookRequest request() {
        try {
            return new OutlookRequest(
                    months, runs, SEED, Math.max(1, Runtime.getRuntime().availableProcessors()));
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), "--" + e.getMessage(), e);
        }
    }
}
