package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.intake.StoredNames;
import dev.injectorplanner.app.start.Starter;
import dev.injectorplanner.app.start.StarterKit;
import dev.injectorplanner.app.start.StoreNeeds;
import dev.injectorplanner.app.start.StoreNeeds.Need;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.propose.KnownNames;
import dev.injectorplanner.imports.propose.Proposer;
import java.io.Console;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** The first steps with a fleet's own files. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        description =
                "First steps: stores starter kits (example figures, to be corrected) and depots, proposes matches for your"
                        + " files, and reports what is missing for a first plan and what each table would add.")
final class StartCommand extends StoreCommand {
    @Parameters(
            arity = "0..*",
            paramLabel = "FILE",
            description = "Files as you have them: a match is proposed for each.")
    private List<Path> files = List.of();

    @Option(
            names = "--kits",
            split = ",",
            paramLabel = "KIT",
            description =
                    "Starter kits: v8, inline-six. Engine family, parts, access steps, kit parts and intervals, all examples.")
    private List<String> kits = List.of();

    @Option(names = "--depots", split = ",", paramLabel = "NAME", description = "Your depots, separated by commas.")
    private List<String> depots = List.of();

    @Option(names = "--zone", paramLabel = "ZONE", description = "Time zone of the depots, such as America/Chicago.")
    private @Nullable String zone;

    @Option(
            names = "--before-records",
            description = "Gives each cylinder without an injector on record one from before the records began.")
    private boolean beforeRecords;

    @Option(names = "--again", description = "Stores kits again, and replaces matches that are there already.")
    private boolean again;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        if (kits.isEmpty() && depots.isEmpty() && files.isEmpty() && !beforeRecords && !json) {
            ask(System.console());
        }
        try (Application application = open()) {
            Starter starter = new Starter(application.store(), application.intake());
            starter.kits(kits.stream().map(StarterKit::of).toList(), again);
            int added = depots.isEmpty()
                    ? 0
                    : starter.depots(depots.stream().map(String::strip).toList(), zoneId());
            int filled = beforeRecords ? starter.fillBeforeRecords() : 0;
            KnownNames known = StoredNames.read(application.store());
            MatchRun matches = new MatchRun(out(), new Proposer(known), again);
            boolean refused = matches.run(
                    files.stream().filter(file -> !MatchFile.isMatch(file)).toList(), Proposer.Said.NOTHING);
            List<Need> needs = new StoreNeeds(application.store()).list();
            if (json) {
                Map<String, Object> all = new LinkedHashMap<>();
                all.put("depotsAdded", added);
                all.put("injectorsBeforeRecords", filled);
                all.put("needs", needs);
                Json.print(out(), all);
            } else {
                print(added, filled, needs);
                matches.print();
                next(needs, matches.folder());
            }
            out().flush();
            return refused ? PlannerCommand.REFUSED : 0;
        }
    }

    private void ask(@Nullable Console console) {
        if (console == null) {
            return;
        }
        out().println("Starter kits hold example figures, to be corrected later: v8, inline-six.");
        kits = answers(console, "Kits, separated by commas (none: just Enter): ");
        depots = answers(console, "Your depots, separated by commas (none: just Enter): ");
        if (!depots.isEmpty()) {
            zone = console.readLine("Their time zone, such as America/Chicago: ");
        }
    }

    private static List<String> answers(Console console, String question) {
        String line = console.readLine(question);
        return line == null || line.isBlank()
                ? List.of()
                : Arrays.stream(line.split(","))
                        .map(String::strip)
                        .filter(each -> !each.isEmpty())
                        .toList();
    }

    private ZoneId zoneId() {
        if (zone == null) {
            throw new ParameterException(
                    commandLine(), "--depots needs a time zone. Fix: add --zone, such as --zone America/Chicago.");
        }
        try {
            return ZoneId.of(zone.strip());
        } catch (DateTimeException e) {
            throw new ParameterException(
                    commandLine(), "--zone " + zone + ": is not a time zone. Fix: write it as America/Chicago.", e);
        }
    }

    private void print(int added, int filled, List<Need> needs) {
        PrintWriter out = out();
        if (!kits.isEmpty()) {
            out.println(
                    "Starter kits stored. Their names begin with \"" + StarterKit.MARK.strip()
                            + "\": hours, prices, coolant and intervals are examples. Correct them in the settings or by loading your own.");
        }
        if (added > 0) {
            out.println("Depots added: " + added
                    + ", with example figures (2 bays, 16 hours a day, 90 an hour). Correct them.");
        }
        if (filled > 0) {
            out.println("Injectors from before the records began: " + filled + " added.");
        }
        out.println("For a first plan:");
        for (Need need : needs) {
            String state = need.missing() ? need.needed() ? "NEEDED " : "missing" : "there  ";
            out.printf(
                    "  %s  %-18s %s%n",
                    state, need.name(), need.missing() ? need.adds() : String.format("%,d rows", need.rows()));
        }
    }

    /** @param matches where matches were written, or empty */
    private void next(List<Need> needs, String matches) {
        boolean missing = needs.stream().anyMatch(need -> need.needed() && need.missing());
        String load = matches.isEmpty()
                ? "load your files (load FILE...; templates --out DIR writes their forms), then plan."
                : "answer what the matches ask, then: load --match " + matches + " FILE..., then: plan.";
        out().println("Next: " + (missing || !matches.isEmpty() ? load : "plan."));
    }
}
