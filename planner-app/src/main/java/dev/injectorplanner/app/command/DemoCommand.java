package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.DemoFolder;
import dev.injectorplanner.app.demo.DemoStore;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.output.Reader;
import dev.injectorplanner.app.output.Sheets;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.units.SiteForm;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The whole job once, on files that come with the program. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Loads sample files into a new store, plans, and writes the sheets for everyone.")
final class DemoCommand implements Callable<Integer> {
    private static final long SEED = 1;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--dir",
            paramLabel = "DIR",
            defaultValue = "planner-demo",
            description = "Folder of the demo (default: ${DEFAULT-VALUE}).")
    private Path dir;

    @Option(names = "--trucks", paramLabel = "N", description = "Generates a fleet of N trucks instead.")
    private @Nullable Integer trucks;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        DemoFolder folder = DemoFolder.take(dir);
        List<Path> files = files(folder);
        DemoStore.Filled filled;
        try (LoadProgress progress = LoadProgress.only(json);
                Application application = Application.open(StoreSettings.embedded(folder.data()))) {
            filled = DemoStore.fill(application, files, progress);
        }
        List<FileReport> reports = filled.reports();
        Planned planned = filled.planned();
        List<Path> sheets = new Sheets(folder.sheets(), SiteForm.STANDARD).write(planned, Reader.all());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("files", LoadPrinter.json(reports));
            all.put("plan", PlanJsonView.of(planned.plan(), null));
            all.put("sheets", sheets.stream().map(Path::toString).toList());
            Json.print(out, all);
        } else {
            print(out, folder, reports, planned, sheets);
        }
        out.flush();
        return 0;
    }

    private List<Path> files(DemoFolder folder) throws IOException {
        return trucks == null
                ? SampleFiles.copyTo(folder.files())
                : FleetFiles.write(
                        new FleetGenerator(DemoFleet.ofSize(trucks, SEED))
                                .generate()
                                .snapshot(),
                        folder.files());
    }

    private static void print(
            PrintWriter out, DemoFolder folder, List<FileReport> reports, Planned planned, List<Path> sheets) {
        out.println("Files loaded from " + folder.files());
        new LoadPrinter(out, false, false).print(reports);
        out.println();
        new PlanPrinter(out).print(planned.plan());
        out.println();
        out.println("Sheets written to " + folder.sheets());
        sheets.forEach(sheet -> out.println("  " + sheet.getFileName()));
        out.println();
        out.println("Next: open upcoming-work.xlsx, or change a file and load it into the demo's store:");
        out.println("  java -jar planner-app/target/planner.jar load --data " + folder.data() + " FILE");
        out.println(
                "  java -jar planner-app/target/planner.jar plan --data " + folder.data() + " --on " + DemoFleet.TODAY);
    }
}
