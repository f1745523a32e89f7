package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.HeldOff;
import dev.injectorplanner.core.plan.SafetyCase;
import dev.injectorplanner.core.schedule.days.DayPin;
import dev.injectorplanner.reports.table.TextTable;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
            name = "day",
            mixinStandardHelpOptions = true,
            description = "Pins a truck's visit to a day, and to a bay and a start where they are given.")
    int day(
            @Mixin StoreOptions store,
            @Parameters(paramLabel = "TRUCK") String truck,
            @Parameters(paramLabel = "DAY", description = "Such as 2026-03-03.") LocalDate day,
            @Option(names = "--bay", paramLabel = "N", description = "Counted from 1 (default: any).") @Nullable
                    Integer bay,
            @Option(names = "--start", paramLabel = "HH:MM", description = "On the quarter hour (default: any).")
                    @Nullable
                    LocalTime start,
            @Option(names = "--why", defaultValue = "", description = "The reason.") String why) {
        return keep(store, Hold.day(truck, new DayPin(day, bay, start), Instant.now(), Person.here(), why));
    }

    @Command(
            name = "off",
            mixinStandardHelpOptions = true,
            description = "Holds the diagnosis of a truck with a safety fault off, against the planner's advice.")
    int off(
            @Mixin StoreOptions store,
            @Parameters(paramLabel = "TRUCK") String truck,
            @Option(names = "--why", required = true, description = "The reason, and what is done meanwhile.")
                    String why,
            @Option(names = "--confirm", description = "That you have read what may happen and answer for it.")
                    boolean confirm) {
        if (!confirm) {
            spec.commandLine()
                    .getErr()
                    .println(SafetyCase.WARNING + " Fix: if the diagnosis must wait all the same, add --confirm.");
            return 1;
        }
        HeldOff held = new HeldOff(why, Person.here(), LocalDate.now(), Set.of());
        try (Application application = Application.open(store.settings())) {
            application.safetyHolds().holdOff(truck, held, true, Instant.now());
        }
        return say("Truck " + truck + ": diagnosis HELD OFF by " + held.by() + ": " + why + ". " + SafetyCase.WARNING);
    }

    @Command(
            name = "resume",
            mixinStandardHelpOptions = true,
            description = "Plans the diagnosis of a truck again that was held off.")
    int resume(@Mixin StoreOptions store, @Parameters(paramLabel = "TRUCK") String truck) {
        try (Application application = Application.open(store.settings())) {
            application.safetyHolds().resume(truck, Instant.now(), Person.here());
        }
        return say("Truck " + truck + ": diagnosis no longer held off");
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
        return keep(store, new Hold(truck, kind, week, Instant.now(), Person.here(), why));
    }

    private int keep(StoreOptions store, Hold hold) {
        try (Application application = Application.open(store.settings())) {
            application.holds().hold(hold);
        }
        return say("Truck " + hold.truck() + ": " + words(hold));
    }

    private static String words(Hold hold) {
        if (hold.kind() == Hold.Kind.PIN) {
            DayPin day = hold.day();
            return "pinned to " + (day == null ? hold.week() : day.words());
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
