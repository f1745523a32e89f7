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
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.platform.commons.support.AnnotationSupport;

/** Starts the application once a top-level test class; nested classes share it. */
final class PlannerExtension implements BeforeAllCallback, ParameterResolver {
    private static final ExtensionContext.Namespace ROOM = ExtensionContext.Namespace.create(PlannerExtension.class);

    @Override
    public void beforeAll(ExtensionContext context) {
        running(context);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        return type == URI.class || type == RunningApp.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        RunningApp app = running(context).app;
        return parameter.getParameter().getType() == URI.class ? app.address() : app;
    }

    /** In the store of the class's own context, or of its parent's when nested: closed when that class is done. */
    private static Running running(ExtensionContext context) {
        return context.getStore(ROOM)
                .getOrComputeIfAbsent(
                        Running.class, key -> Running.start(context.getRequiredTestClass()), Running.class);
    }

    private record Running(Path folder, RunningApp app, AutoCloseable database) implements AutoCloseable {
        static Running start(Class<?> test) {
            try {
                Path folder = Files.createTempDirectory("planner-test");
                boolean shared = AnnotationSupport.findAnnotation(test, PlannerRuns.class)
                                .orElseThrow()
                                .on()
                        == PlannerRuns.Database.POSTGRES;
                EmbeddedPostgres postgres = shared ? EmbeddedPostgres.start() : null;
                StoreSettings settings = shared
                        ? new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres")
                        : StoreSettings.embedded(folder.resolve("data"));
                Application application = Application.open(settings);
                try (StoreWriter writer = application.store().writer()) {
                    FleetMerge.into(writer, OneOfEach.fleet());
                    writer.commit();
                }
                Visitor.addAll(application.store());
                RunningApp app = WebApp.start(
                        CompletableFuture.completedFuture(application),
                        JobsSettings.of(Settings.none()),
                        Listening.here(0),
                        new SiteClock(InstantSource.system()));
                return new Running(folder, app, shared ? postgres : () -> {});
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void close() throws Exception {
            app.close();
            database.close();
            try (Stream<Path> paths = Files.walk(folder)) {
                for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
