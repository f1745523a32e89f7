package dev.injectorplanner.app.command;

import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The templates of all tables, out of the program itself. */
@Command(
        name = "templates",
        mixinStandardHelpOptions = true,
        description = "Writes a template for each table: its columns and two example rows.")
final class TemplatesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--out", paramLabel = "DIR", description = "Where they are written (default: planner-templates).")
    private Path folder = Path.of("planner-templates");

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try {
            Files.createDirectories(folder);
            for (Table<?> table : Tables.ALL) {
                String name = table.name() + ".csv";
                try (InputStream in = TemplatesCommand.class.getResourceAsStream("/samples/templates/" + name)) {
                    if (in == null) {
                        throw new IllegalStateException("the program was built without the template " + name);
                    }
                    Files.copy(in, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write the templates to " + folder, e);
        }
        out.println(
                Tables.ALL.size() + " templates in " + folder.toAbsolutePath().normalize()
                        + ". Replace their example rows by yours, then: load " + folder + "/*.csv");
        out.flush();
        return 0;
    }
}
