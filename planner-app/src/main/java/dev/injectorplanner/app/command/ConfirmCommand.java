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

/** Confirms a week's visits: the shop and the drivers were told. */
@Command(
        name = "confirm",
        aliases = "announce",
        mixinStandardHelpOptions = true,
        description =
                "Confirms a week's visits: later plans move them only if that saves more than the rescheduling cost.")
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
        IsoWeek confirmed = week();
        VisitConfirmation.Confirmed result;
        try (Application application = Application.open(store.settings())) {
            result = application.confirmation().confirm(depot, confirmed, Instant.now(), Person.here());
        }
        var out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, Map.of("week", confirmed, "trucks", result.trucks(), "added", result.added()));
        } else {
            out.println(depot + ", " + confirmed + ": " + result.trucks().size() + " visits confirmed, "
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
