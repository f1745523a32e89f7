package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.output.Reader;
import dev.injectorplanner.app.output.Sheets;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.units.SiteForm;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The sheets of a plan. */
@Command(
        name = "sheets",
        mixinStandardHelpOptions = true,
        description = "Plans, and writes the workbooks: upcoming work, parts needs, coolant, work lists.")
final class SheetsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private PlanOptions options;

    @Mixin
    private StoreOptions store;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "planner-sheets",
            description = "Folder for the sheets (default: ${DEFAULT-VALUE}).")
    private Path out;

    @Option(
            names = "--for",
            paramLabel = "READER",
            split = ",",
            description = "For: manager, buyer, storeman, mechanic (default: all).")
    private List<String> readers = List.of();

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        Set<Reader> chosen = readers();
        options.check();
        Planned planned;
        SiteForm form;
        try (Application application = Application.open(store.settings())) {
            form = application.settings().form();
            planned = application
                    .planning()
                    .plan(options.today(), options.policy(application.planning().policy()), options.depot());
        }
        List<Path> written = new Sheets(out, form).write(planned, chosen);
        var terminal = spec.commandLine().getOut();
        if (json) {
            Json.print(
                    terminal,
                    Map.of("sheets", written.stream().map(Path::toString).toList()));
        } else {
            written.forEach(terminal::println);
            terminal.flush();
        }
        return 0;
    }

    private Set<Reader> readers() {
        Set<Reader> chosen = EnumSet.noneOf(Reader.class);
        for (String name : readers) {
            try {
                chosen.add(Reader.valueOf(name.strip().toUpperCase(Locale.ROOT)));
            } catch (IllegalArgumentException e) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--for " + name + ": is not a reader. Fix: choose from " + Reader.names() + ".",
                        e);
            }
        }
        return chosen.isEmpty() ? Reader.all() : chosen;
    }
}
