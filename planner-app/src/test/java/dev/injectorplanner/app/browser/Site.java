package dev.injectorplanner.app.browser;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.DemoDay;
import dev.injectorplanner.app.demo.DemoStore;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;

/** The application on a free port, with the people of the kit, for browsers to look at. */
abstract sealed class Site implements AutoCloseable {
    /** Where the kit's mechanic works. */
    static final String HOME = "Norrvik";

    private final Path folder;
    private final RunningApp app;
    private final Chromium chromium;
    private final Map<Role, String> signedIn = new EnumMap<>(Role.class);

    private Site(Path folder, RunningApp app, Chromium chromium) {
        this.folder = folder;
        this.app = app;
        this.chromium = chromium;
    }

    /** The demo's fleet on the demo's day. */
    static final class Demo extends Site {
        private Demo(Path folder, RunningApp app, Chromium chromium) {
            super(folder, app, chromium);
        }
    }

    /** Nothing is loaded yet. */
    static final class Empty extends Site {
        private Empty(Path folder, RunningApp app, Chromium chromium) {
            super(folder, app, chromium);
        }
    }

    static Demo demo(Chromium chromium) {
        try {
            Path folder = Files.createTempDirectory("planner-demo");
            Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
            DemoStore.fill(
                    application,
                    SampleFiles.copyTo(Files.createDirectories(folder.resolve("files"))),
                    LoadListener.SILENT);
            Visitor.addAll(application.store(), HOME);
            return new Demo(folder, serve(application), chromium);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Empty empty(Chromium chromium) {
        try {
            Path folder = Files.createTempDirectory("planner-empty");
            Application application = Application.open(StoreSettings.embedded(folder.resolve("data")));
            Visitor.addAll(application.store(), null);
            return new Empty(folder, serve(application), chromium);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RunningApp serve(Application application) {
        return WebApp.start(
                CompletableFuture.completedFuture(application),
                JobsSettings.of(Settings.none()),
                Listening.here(0),
                new SiteClock(DemoDay.clock()));
    }

    URI address() {
        return app.address();
    }

    /** Somebody who has not signed in. */
    Person nobody(Size size) {
        return new Person(chromium.browser(), address(), size, null);
    }

    /** The kit's person with a role, signed in; the form is filled once, later persons of the role keep its cookie. */
    Person person(Role role, Size size) {
        String cookies = signedIn.get(role);
        Person person = new Person(chromium.browser(), address(), size, cookies);
        if (cookies == null) {
            person.signIn(Visitor.name(role), Visitor.PASSWORD);
            signedIn.put(role, person.cookies());
        }
        return person;
    }

    @Override
    public void close() throws IOException {
        app.close();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
