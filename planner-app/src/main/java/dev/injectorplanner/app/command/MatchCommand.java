package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.intake.StoredNames;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.propose.KnownNames;
import dev.injectorplanner.imports.propose.Proposer;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Proposals for foreign files, written as matches that a person reads and corrects. */
@Command(
        name = "match",
        mixinStandardHelpOptions = true,
        description =
                "Proposes how foreign files are read and writes a readable match beside each. Check it, answer what it"
                        + " asks, then: load FILE FILE.match.yaml. Nothing is stored.")
final class MatchCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Files as offices have them.")
    private List<Path> files;

    @Option(names = "--as", paramLabel = "TABLE", description = "The table that the files contain.")
    private @Nullable String as;

    @Option(names = "--sheet", paramLabel = "NAME", description = "The sheet of a workbook.")
    private String sheet = "";

    @Option(names = "--heading-row", paramLabel = "N", description = "The row that holds the headings.")
    private long headingRow;

    @Option(names = "--again", description = "Replaces a match that is there already.")
    private boolean again;

    @Mixin
    private StoreOptions store;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        MatchRun run = new MatchRun(spec.commandLine().getOut(), proposer(), again);
        List<Path> given =
                files.stream().filter(file -> !MatchFile.isMatch(file)).toList();
        boolean refused = run.run(given, new Proposer.Said(table(), sheet, headingRow));
        if (json) {
            run.printJson();
        } else {
            run.print();
        }
        spec.commandLine().getOut().flush();
        return refused ? PlannerCommand.REFUSED : 0;
    }

    /** Names in the store help, where there is one. */
    private Proposer proposer() {
        if (!store.isGiven() && !java.nio.file.Files.isDirectory(Path.of("planner-data"))) {
            return new Proposer(KnownNames.NONE);
        }
        try (Application application = Application.open(store.settings())) {
            return new Proposer(StoredNames.read(application.store()));
        }
    }

    private @Nullable Table<?> table() {
        try {
            return as == null ? null : Tables.get(as);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), "--as " + e.getMessage(), e);
        }
    }
}
