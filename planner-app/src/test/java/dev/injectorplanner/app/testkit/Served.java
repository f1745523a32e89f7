package dev.injectorplanner.app.testkit;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import java.time.InstantSource;
import java.util.concurrent.CompletableFuture;

/** The application around a store of the test's own choice, with {@link OneOfEach} and the four people in it. */
public final class Served {
    private Served() {}

    public static RunningApp on(StoreSettings settings) {
        Application application = Application.open(settings);
        try (StoreWriter writer = application.store().writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
        Visitor.addAll(application.store());
        return WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(InstantSource.system()));
    }
}
