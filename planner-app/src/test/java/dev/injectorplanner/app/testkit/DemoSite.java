package dev.injectorplanner.app.testkit;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/** The demo's fleet of three depots, planned for all of them with its alerts, and the application running around it. */
public final class DemoSite implements AutoCloseable {
    /** The depot of the mechanic. */
    public static final String HOME = "Norrvik";

    /** The moment at which the pages stand. */
    public static final Instant NOW = DemoFleet.TODAY.atTime(9, 0).toInstant(ZoneOffset.UTC);

    private final RunningApp app;

    private DemoSite(RunningApp app) {
        this.app = app;
    }

    /** What a test does to the demo's files before they are loaded. */
    public interface FileChange {
        void change(List<Path> files) throws IOException;
    }

    /** @param folder an empty folder */
    public static DemoSite start(Path folder) throws IOException {
        return start(folder, files -> {});
    }

    /** With other files than the demo's own. */
    public static DemoSite start(Path folder, FileChange change) throws IOException {
        Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        List<Path> files = SampleFiles.copyTo(Files.createDirectories(folder.resolve("files")));
        change.change(files);
        application.intake().load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
        var planned = application
                .planning()
                .planAndKeep("demo", NOW.minusSeconds(60), DemoFleet.TODAY, Policy.standard(), null);
        new Alerts(application.store().dataSource()).update(planned, NOW);
        Visitor.addAll(application.store(), HOME);
        return new DemoSite(WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(InstantSource.fixed(NOW))));
    }

    public RunningApp app() {
        return app;
    }

    public Application application() {
        return app.application();
    }

    @Override
    public void close() {
        app.close();
    }
}
