package dev.injectorplanner.app.command;

import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.List;
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

    /** Whether everything is printed. */
    boolean all() {
        return all;
    }

    List<Path> files() {
        return files;
    }

    LoadSettings settings(Mode mode) {
        LoadSettings settings = new LoadSettings(table(), order(), mode);
        return refused ? settings.withRefusedFiles() : settings;
    }

    private @Nullable Table<?> table() {
        try {
            return as == null ? null : Tables.get(as);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), "--as " + e.getMessage(), e);
        }
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
