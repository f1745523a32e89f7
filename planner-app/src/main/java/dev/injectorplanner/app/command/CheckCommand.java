package dev.injectorplanner.app.command;

import dev.injectorplanner.app.intake.LoadSettings.Mode;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Files looked through, nothing changed. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks files and lists every problem, where it is, and how to fix it. Changes nothing.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private LoadOptions options;

    @Mixin
    private StoreOptions store;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        return LoadCommand.run(spec, options, store, Mode.CHECK, json);
    }
}
