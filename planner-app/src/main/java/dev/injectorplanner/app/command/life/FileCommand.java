package dev.injectorplanner.app.command.life;

import dev.injectorplanner.core.life.NoEstimateException;
import dev.injectorplanner.imports.lives.LivesRefusedException;
import dev.injectorplanner.imports.lives.ReadLives;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A command on one file: reads, computes, prints; refused input is reported line by line on standard error. */
abstract class FileCommand<T> implements Callable<Integer> {
    private static final int REFUSED = 1;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "CSV file with a heading line")
    private Path file;

    @Option(names = "--json", description = "print one JSON object and nothing else")
    private boolean json;

    abstract ReadLives<T> read(Path from) throws LivesRefusedException;

    /** Computes and gives the text to print. */
    abstract String answer(T data, boolean asJson);

    /** Wrong use is found here, before the file is read. */
    void check() {}

    CommandSpec spec() {
        return spec;
    }

    String fileName() {
        return String.valueOf(file.getFileName());
    }

    @Override
    public final Integer call() {
        check();
        PrintWriter complaints = spec.commandLine().getErr();
        try {
            ReadLives<T> read = read(file);
            read.remarks().forEach(complaints::println);
            spec.commandLine().getOut().println(answer(read.data(), json));
            return 0;
        } catch (LivesRefusedException e) {
            e.complaints().forEach(complaints::println);
        } catch (NoEstimateException e) {
            complaints.println(fileName() + ": " + e.getMessage());
        }
        return REFUSED;
    }
}
