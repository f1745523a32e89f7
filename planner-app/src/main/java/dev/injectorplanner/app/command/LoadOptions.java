package dev.injectorplanner.app.command;

import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** What loading and checking have in common. */
final class LoadOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "CSV and XLSX files and vehicle logs, in any order.")
    private List<Path> files;

    @Option(names = "--as", paramLabel = "TABLE", description = "The table the files contain, such as trucks.")
    private @Nullable String as;

    @Option(
            names = "--dates",
            paramLabel = "ORDER",
            description = "How 03/04/2026 is read: dmy (3 April) or mdy (4 March). Without it such dates are refused.")
    private @Nullable String dates;

    @Option(names = "--all", description = "Prints every cause of refused rows, not the ten most costly.")
    private boolean all;

    @Option(names = "--refused", description = "Writes refused rows beside their file when checking, too.")
    private boolean refused;

    @Option(
            names = "--numbers",
            paramLabel = "FORM",
            description =
                    "How 490,254 and 490.254 are read: 1,234.5 (comma for thousands) or 1.234,5 (dot for thousands)."
                            + " Without it such numbers are refused where they are in doubt.")
    private @Nullable String numbers;

    @Option(
            names = "--match",
            paramLabel = "FILE",
            description =
                    "How files of one source are read, as written by the command match; or a folder of such files. It is"
                            + " kept: the next file with these headings needs it no more.")
    private List<Path> matches = List.of();

    /** The matches that were given: named as such, or among the files. */
    List<FileMatch> matches() {
        List<FileMatch> read = new ArrayList<>();
        for (Path match : Stream.concat(matches.stream(), files.stream().filter(MatchFile::isMatch))
                .toList()) {
            if (Files.isDirectory(match)) {
                try (Stream<Path> inside = Files.list(match)) {
                    inside.filter(MatchFile::isMatch)
                            .sorted()
                            .map(MatchFile::read)
                            .forEach(read::add);
                } catch (IOException e) {
                    throw new UncheckedIOException("cannot list " + match, e);
                }
            } else {
                read.add(MatchFile.read(match));
            }
        }
        return read;
    }

    /** Whether everything is printed. */
    boolean all() {
        return all;
    }

    List<Path> files() {
        return files.stream().filter(file -> !MatchFile.isMatch(file)).toList();
    }

    LoadSettings settings(Mode mode) {
        LoadSettings settings = new LoadSettings(table(), order(), mode)
                .withNumbers(numberForm())
                .withMatches(matches());
        return refused ? settings.withRefusedFiles() : settings;
    }

    private @Nullable Table<?> table() {
        try {
            return as == null ? null : Tables.get(as);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), "--as " + e.getMessage(), e);
        }
    }

    private NumberForm numberForm() {
        if (numbers == null) {
            return NumberForm.UNSTATED;
        }
        for (NumberForm form : List.of(NumberForm.POINT, NumberForm.COMMA)) {
            if (form.example().equals(numbers)) {
                return form;
            }
        }
        throw new ParameterException(
                spec.commandLine(),
                "--numbers " + numbers + ": is neither 1,234.5 nor 1.234,5. Fix: choose one of them.");
    }

    private DateOrder order() {
        if (dates == null) {
            return DateOrder.UNSTATED;
        }
        return switch (dates) {
            case "dmy" -> DateOrder.DAY_FIRST;
            case "mdy" -> DateOrder.MONTH_FIRST;
            default ->
                throw new ParameterException(
                        spec.commandLine(), "--dates " + dates + ": is neither dmy nor mdy. Fix: choose one of them.");
        };
    }
}
