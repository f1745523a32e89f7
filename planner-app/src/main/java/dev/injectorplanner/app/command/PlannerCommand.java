package dev.injectorplanner.app.command;

import dev.injectorplanner.app.command.coolant.CoolantCommand;
import dev.injectorplanner.app.command.faults.FaultsCommand;
import dev.injectorplanner.app.command.life.LifeCommand;
import dev.injectorplanner.app.command.schedule.ScheduleCommand;
import dev.injectorplanner.app.demo.DemoFolder.NotTheDemoException;
import dev.injectorplanner.app.output.Sheets.SheetException;
import dev.injectorplanner.app.planning.Planning.NothingToPlanException;
import dev.injectorplanner.app.store.StoreException;
import dev.injectorplanner.app.web.ServeException;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.InvalidFleetException;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.reports.table.TerminalOut;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/** The program's commands together. Exit codes: 0 done, 1 refused input, 2 wrong use. */
@Command(
        name = "planner",
        mixinStandardHelpOptions = true,
        version = "Injector Planner",
        description = "Plans injector work for a fleet of diesel trucks.",
        subcommands = {
            DemoCommand.class,
            StartCommand.class,
            TemplatesCommand.class,
            MatchCommand.class,
            LoadCommand.class,
            CheckCommand.class,
            PlanCommand.class,
            SettingsCommand.class,
            HoldCommand.class,
            ConfirmCommand.class,
            AdviseCommand.class,
            ReplayCommand.class,
            CalibrateCommand.class,
            OutlookCommand.class,
            RulesCommand.class,
            SheetsCommand.class,
            AlertsCommand.class,
            MailCommand.class,
            CalendarCommand.class,
            DropCommand.class,
            LifeCommand.class,
            CoolantCommand.class,
            FaultsCommand.class,
            ScheduleCommand.class,
            ServeCommand.class,
            JobsCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            MoveCommand.class,
            UserCommand.class
        })
public final class PlannerCommand {
    /** Input was refused, or the store could not be used. */
    static final int REFUSED = 1;

    private PlannerCommand() {}

    /** Runs one command line and answers its exit code. */
    public static int run(String... args) {
        PlainLog.of(args);
        CommandLine line = new CommandLine(new PlannerCommand());
        out(TerminalWidth.columns(), System.out, args).ifPresent(line::setOut);
        return line.registerConverter(LocalDate.class, PlannerCommand::date)
                .setExecutionExceptionHandler(PlannerCommand::inWords)
                .execute(args);
    }

    /**
     * Where tables keep to the width of a terminal; none for a pipe, and where everything is wanted.
     *
     * @param columns characters in a line of the terminal; 0: there is none
     */
    static Optional<PrintWriter> out(int columns, PrintStream to, String... args) {
        boolean cut = columns > 0 && !Arrays.asList(args).contains("--all");
        return cut ? Optional.of(new TerminalOut(to, columns)) : Optional.empty();
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("\"" + text + "\" is not a date. Fix: write it as 2026-03-02");
        }
    }

    /** A person's mistake is a sentence; only a fault of the program is a stack trace. */
    private static int inWords(Exception e, CommandLine commandLine, ParseResult parsed) {
        if (e instanceof FileRefusedException
                || e instanceof InvalidValueException
                || e instanceof InvalidFleetException
                || e instanceof StoreException
                || e instanceof NothingToPlanException
                || e instanceof SheetException
                || e instanceof NotTheDemoException
                || e instanceof ServeException) {
            commandLine.getErr().println(e.getMessage());
        } else {
            commandLine.getErr().println("Something went wrong inside the program; please report what follows.");
            e.printStackTrace(commandLine.getErr());
        }
        return REFUSED;
    }
}
