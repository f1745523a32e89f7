package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.DemoDay;
import dev.injectorplanner.app.demo.DemoFolder;
import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Secrets;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.generate.DemoFleet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/** What is different when the demo is served: its folder, its day, its people. */
final class DemoServing {
    private static final String BY = "serve --demo";
    private static final Path FOLDER = Path.of("planner-demo", "data");

    private DemoServing() {}

    /**
     * The demo's store.
     *
     * @throws InvalidValueException where other machines would reach it, or a database was named
     * @throws DemoFolder.NotTheDemoException where the folder is not the demo's
     */
    static StoreSettings place(StoreOptions store, Listening listening) {
        if (!listening.isLocal() || listening.behindTls()) {
            throw new InvalidValueException(
                    "--demo", "", "is for this machine only", "leave out --address and --behind-tls");
        }
        Path folder = store.findFolder(FOLDER)
                .orElseThrow(() -> new InvalidValueException(
                        "--demo", "", "shows the demo's own folder, not a database", "leave out --database"));
        DemoFolder.requireData(folder);
        return StoreSettings.embedded(folder);
    }

    /**
     * The morning of the day that the fleet was made for, or where its store left off.
     *
     * @param opening the demo's store, waited for when somebody first asks for the time
     */
    static SiteClock clock(CompletableFuture<Application> opening) {
        CompletableFuture<InstantSource> source = opening.thenApply(
                application -> DemoDay.clock(application.store().dataSource()));
        return new SiteClock(() -> source.join().instant());
    }

    /** New passwords for the demo's people, shown once. */
    static void signIns(People people, Application application, PrintWriter out) {
        @Nullable
        String depot = application.store().snapshot().depots().stream()
                .map(each -> each.depot())
                .sorted()
                .findFirst()
                .orElse(null);
        Map<String, NewPerson> demo = new LinkedHashMap<>();
        demo.put("fleet manager, all depots", new NewPerson("manager", Set.of(Role.MANAGER), null));
        demo.put("parts buyer, all depots", new NewPerson("buyer", Set.of(Role.BUYER), null));
        demo.put("storeman, all depots", new NewPerson("storeman", Set.of(Role.STOREMAN), null));
        if (depot != null) {
            demo.put("mechanic at " + depot, new NewPerson("mechanic", Set.of(Role.MECHANIC), depot));
        }
        demo.put("administrator", new NewPerson("administrator", Set.of(Role.ADMINISTRATOR), null));
        out.println("Demo of " + DemoFleet.TODAY + ". Sign in as one of these; they work until the next start:");
        demo.forEach((words, person) -> {
            String password = Secrets.password();
            if (people.find(person.name()).isPresent()) {
                people.setPassword(person.name(), password, false, BY);
            } else {
                people.add(person, password, false, BY);
            }
            out.printf("  %-14s %s  (%s)%n", person.name(), password, words);
        });
    }
}
