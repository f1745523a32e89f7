package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.reports.table.TextTable;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the manager holds, stored: every later plan keeps to it. */
@Command(
        name = "hold",
        mixinStandardHelpOptions = true,
        description = "Pins a truck to a week, blocks a week, or releases the truck.")
final class HoldCommand {
    private static final String NEVER = "never";

    @Spec
    private CommandSpec spec;

    @Mixin
    private StoreOptions before;

    @Command(name = "pin", mixinStandardHelpOptions = true, description = "Pins a truck's visit to a week.")
    int pin(
            @Mixin StoreOptions store,
            @Parameters(paramLabel = "TRUCK") String truck,
            @Parameters(paramLabel = "WEEK", description = "Such as 2026-W12.") String week,
            @Option(names = "--why", defaultValue = "", description = "The reason.") String why) {
        return hold(store, truck, Hold.Kind.PIN, week(week), why);
    }

    @Command(
            name = "block",
            aliases = "refuse",
            mixinStandardHelpOptions = true,
            description = "Blocks a week, or every week, for a truck.")
    int block(
            @Mixin StoreOptions store,
            @Parameters(paramLabel = "TRUCK") String truck,
            @Parameters(paramLabel = "WEEK", description = "Such as 2026-W12, or never.") String week,
            @Option(names = "--why", defaultValue = "", description = "The reason.") String why) {
        return hold(store, truck, Hold.Kind.REFUSE, week.equals(NEVER) ? null : week(week), why);
    }

    @Command(name = "release", mixinStandardHelpOptions = true, description = "Releases all holds on a truck.")
    int release(@Mixin StoreOptions store, @Parameters(paramLabel = "TRUCK") String truck) {
        int released;
        try (Application application = Application.open(store.settings())) {
            released = application.holds().release(truck, Instant.now(), Person.here());
        }
        return say("Truck " + truck + ": " + (released == 0 ? "had no holds" : "released"));
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the holds.")
    int list(
            @Mixin StoreOptions store,
            @Option(names = "--depot", paramLabel = "D", description = "One depot (default: all).") @Nullable
                    String depot,
            @Option(names = "--json", description = "Prints one JSON object.") boolean json) {
        List<Hold> holds;
        try (Application application = Application.open(store.settings())) {
            holds = application.holds().list(depot);
        }
        if (json) {
            Json.print(spec.commandLine().getOut(), Map.of("holds", holds));
            return 0;
        }
        if (holds.isEmpty()) {
            return say("No holds.");
        }
        TextTable table = new TextTable("Truck", "Held", "By", "Why");
        holds.forEach(hold -> table.row(hold.truck(), words(hold), hold.madeBy(), hold.why()));
        table.print(spec.commandLine().getOut());
        spec.commandLine().getOut().flush();
        return 0;
    }

    private int hold(StoreOptions store, String truck, Hold.Kind kind, @Nullable IsoWeek week, String why) {
        Hold hold = new Hold(truck, kind, week, Instant.now(), Person.here(), why);
        try (Application application = Application.open(store.settings())) {
            application.holds().hold(hold);
        }
        return say("Truck " + truck + ": " + words(hold));
    }

    private static String words(Hold hold) {
        if (hold.kind() == Hold.Kind.PIN) {
            return "pinned to " + hold.week();
        }
        return hold.week() == null ? "blocked in every week" : "blocked in " + hold.week();
    }

    private IsoWeek week(String text) {
        try {
            return IsoWeek.parse(text);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    private int say(String line) {
        spec.commandLine().getOut().println(line);
        spec.commandLine().getOut().flush();
        return 0;
    }
}
