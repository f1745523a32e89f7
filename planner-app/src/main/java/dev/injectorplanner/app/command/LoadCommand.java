package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.LoadNotes;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.imports.match.FileMatch;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Files into the store. */
@Command(
        name = "load",
        mixinStandardHelpOptions = true,
        description = "Loads files into the store. Good rows are stored; refused ones are written beside the file.")
final class LoadCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private LoadOptions options;

    @Mixin
    private StoreOptions store;

    @ArgGroup(exclusive = true)
    private ModeOptions mode = new ModeOptions();

    private static final class ModeOptions {
        @Option(names = "--check", description = "Changes nothing, reports what would happen.")
        private boolean check;

        @Option(names = "--all-or-nothing", description = "Stores a file only if every row is good.")
        private boolean allOrNothing;
    }

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        return run(
                spec,
                options,
                store,
                mode.check ? Mode.CHECK : mode.allOrNothing ? Mode.ALL_OR_NOTHING : Mode.GOOD_ROWS,
                json);
    }

    /** Exit code of a program that Ctrl-C ended, as shells have it: 128 and the number of the signal. */
    private static final int STOPPED = 130;

    /** Of a folder of matches only those are kept by which a file was stored. */
    private static boolean isUsed(FileMatch match, List<FileReport> reports) {
        return reports.stream()
                .filter(FileReport::applied)
                .flatMap(report -> report.remarks().stream())
                .anyMatch(remark -> remark.text()
                        .equals("read as table " + match.table() + " by the match made from " + match.source()));
    }

    static int run(CommandSpec spec, LoadOptions options, StoreOptions store, Mode mode, boolean json) {
        var settings = options.settings(mode);
        var out = spec.commandLine().getOut();
        List<FileReport> reports;
        try (LoadProgress listener = LoadProgress.here(json, mode == Mode.GOOD_ROWS);
                Application application = Application.open(store.settings())) {
            try {
                reports = application.intake().load(options.files(), settings, listener);
            } catch (LoadProgress.StoppedException e) {
                LoadNotes.write(application.audit(), Person.here(), listener.reports());
                listener.stoppedFile()
                        .filter(file -> mode == Mode.GOOD_ROWS)
                        .ifPresent(file ->
                                application.audit().record(Person.here(), "load a file", file, "", listener.inWords()));
                new LoadPrinter(out, mode == Mode.CHECK, options.all()).print(listener.reports());
                out.flush();
                listener.printStop();
                return STOPPED;
            }
            LoadNotes.write(application.audit(), Person.here(), reports);
            if (mode != Mode.CHECK && reports.stream().anyMatch(FileReport::applied)) {
                settings.matches().stream()
                        .filter(match -> isUsed(match, reports))
                        .forEach(match -> application.intake().matches().save(match, Instant.now(), Person.here()));
            }
        }
        if (json) {
            LoadPrinter.printJson(out, reports);
        } else {
            new LoadPrinter(out, mode == Mode.CHECK, options.all()).print(reports);
        }
        out.flush();
        return reports.stream().anyMatch(FileReport::anyRefused) ? PlannerCommand.REFUSED : 0;
    }
}
