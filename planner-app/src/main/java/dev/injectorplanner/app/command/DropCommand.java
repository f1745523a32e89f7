package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.drop.DropFolder;
import dev.injectorplanner.app.drop.DropResult;
import dev.injectorplanner.app.drop.DropResult.Outcome;
import dev.injectorplanner.app.drop.DropSettings;
import dev.injectorplanner.app.intake.LoadNotes;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One look at the drop folder. */
@Command(
        name = "drop",
        mixinStandardHelpOptions = true,
        description = "Loads the files in a drop folder once and moves them to its folders done and refused.")
final class DropCommand extends StoreCommand {
    @Parameters(paramLabel = "DIR", description = "The drop folder.")
    private Path folder;

    @Option(
            names = "--settled",
            paramLabel = "SECONDS",
            description = "Seconds without change after which a file counts as complete (default: 30).")
    private long settledSeconds = DropSettings.SETTLED.toSeconds();

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        DropSettings settings = new DropSettings(folder, Duration.ofSeconds(settledSeconds), DropSettings.DEAD_AFTER);
        List<DropResult> all;
        try (Application application = open()) {
            all = new DropFolder(application.intake(), settings, "by-hand-" + UUID.randomUUID(), Clock.systemUTC())
                    .pass();
            LoadNotes.write(application.audit(), Person.here(), DropResult.loaded(all));
        }
        var out = out();
        if (json) {
            Json.print(out, Map.of("files", all.stream().map(DropCommand::json).toList()));
        } else if (all.isEmpty()) {
            out.println(folder + " has nothing to load.");
        } else {
            all.forEach(each -> out.println(each.words()));
        }
        out.flush();
        return all.stream().anyMatch(each -> each.outcome() == Outcome.REFUSED) ? PlannerCommand.REFUSED : 0;
    }

    private static Map<String, String> json(DropResult dropped) {
        Map<String, String> json = new LinkedHashMap<>();
        json.put("file", dropped.name());
        json.put("outcome", dropped.outcome().name().toLowerCase(Locale.ROOT));
        json.put("words", dropped.words());
        json.put("place", dropped.place().toString());
        return json;
    }
}
