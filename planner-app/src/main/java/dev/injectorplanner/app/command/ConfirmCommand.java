package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.planning.VisitConfirmation;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Tells the planner that a week's visits were announced to the drivers. */
@Command(
        name = "announce",
        mixinStandardHelpOptions = true,
        description = "Notes that a week's visits were announced: later plans move them only if it pays.")
final class ConfirmCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--depot", paramLabel = "D", required = true, description = "The depot.")
    private String depot;

    @Option(names = "--week", paramLabel = "WEEK", required = true, description = "The week, such as 2026-W12.")
    private String week;

    @Mixin
    private StoreOptions store;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        IsoWeek announced = week();
        VisitConfirmation.Announced result;
        try (Application application = Application.open(store.settings())) {
            result = application.announcing().announce(depot, announced, Instant.now(), Person.here());
        }
        var out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, Map.of("week", announced, "trucks", result.trucks(), "added", result.added()));
        } else {
            out.println(depot + ", " + announced + ": " + result.trucks().size() + " visits announced, "
                    + result.added() + " of them new"
                    + (result.trucks().isEmpty() ? "" : ": " + String.join(", ", result.trucks())));
            out.flush();
        }
        return 0;
    }

    private IsoWeek week() {
        try {
            return IsoWeek.parse(week);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), "--week: " + e.getMessage(), e);
        }
    }
}
