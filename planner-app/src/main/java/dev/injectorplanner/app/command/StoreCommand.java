package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command that works on the store. */
abstract class StoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private StoreOptions store;

    /** The store that was named. */
    StoreOptions store() {
        return store;
    }

    /** Opens what was named; to be closed by whoever asks. */
    Application open() {
        return Application.open(store.settings());
    }

    CommandLine commandLine() {
        return spec.commandLine();
    }

    PrintWriter out() {
        return commandLine().getOut();
    }
}
