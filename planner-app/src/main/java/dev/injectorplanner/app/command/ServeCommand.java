package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.security.Pbkdf2Hashing;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.web.Listening;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.wiring.ProviderSettings;
import dev.injectorplanner.core.check.InvalidValueException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Pages and scheduled jobs, until it is told to stop. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Runs the scheduled jobs and serves the pages until it is stopped (Ctrl-C).")
final class ServeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private StoreOptions store;

    @Mixin
    private SettingsOption settings;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "8080",
            description = "Port to listen on (default: ${DEFAULT-VALUE}; 0: any free one).")
    private int port;

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "Address to listen on (default: ${DEFAULT-VALUE}, this machine only). Browsers on other"
                    + " machines can sign in only through a TLS proxy: see --behind-tls.")
    private String address;

    @Option(names = "--behind-tls", description = "A TLS proxy in front sends X-Forwarded-For and X-Forwarded-Proto.")
    private boolean behindTls;

    @Option(
            names = "--proxy",
            paramLabel = "ADDRESS",
            split = ",",
            description =
                    "Address of a proxy whose forwarded headers are believed (default: whoever reaches the port).")
    private List<String> proxies = List.of();

    @Option(
            names = "--demo",
            description = "Shows the demo fleet on its own date, with one-time sign-ins, on this machine only.")
    private boolean demo;

    @Option(
            names = "--first-password-file",
            paramLabel = "FILE",
            description = "At the first start, write the password to this file, readable by its owner only, instead of"
                    + " showing it. For a service, whose output is kept in a log.")
    private @Nullable Path firstPassword;

    @Override
    public Integer call() throws InterruptedException {
        Listening listening = listening();
        if (firstPassword != null) {
            FirstPasswordFile.requireFolder(firstPassword);
        }
        var jobs = settings.jobs();
        var provider = settings.provider();
        StoreSettings place = demo ? DemoServing.place(store, listening) : store.settings();
        LoggerFactory.getLogger(ServeCommand.class).debug("Opening {}", place); // before a second thread logs
        var opening = CompletableFuture.supplyAsync(() -> Application.open(place));
        SiteClock clock = demo ? DemoServing.clock(opening) : new SiteClock(InstantSource.system());
        try (RunningApp running = WebApp.start(opening, jobs, listening, clock, provider)) {
            announce(running, provider);
            running.await();
        }
        return 0;
    }

    private void announce(RunningApp running, Optional<ProviderSettings> provider) {
        try {
            say(running, provider);
        } catch (RuntimeException e) {
            if (!running.isClosing()) {
                throw e;
            } // told to stop before it had said all: the store is closed under it
        }
    }

    private void say(RunningApp running, Optional<ProviderSettings> provider) {
        PrintWriter out = spec.commandLine().getOut();
        long up = System.currentTimeMillis()
                - ManagementFactory.getRuntimeMXBean().getStartTime();
        out.printf("Ready on %s after %.1f s. Stop with Ctrl-C.%n", running.address(), up / 1000.0);
        People people = new People(running.application().store().dataSource(), new Pbkdf2Hashing());
        SignInNote.write(running.application(), provider);
        if (demo) {
            DemoServing.signIns(people, running.application(), out);
        } else {
            firstSignIn(people, out);
        }
        if (!listening().isLocal() && !behindTls) {
            out.println("Browsers send the sign-in over TLS only: put a TLS proxy in front and add --behind-tls.");
        }
        out.flush();
    }

    private Listening listening() {
        try {
            return Listening.on(address, port, behindTls).behind(proxies);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    private void firstSignIn(People people, PrintWriter out) {
        people.findFirstPassword().ifPresent(password -> {
            Path file = firstPassword;
            if (file != null) {
                FirstPasswordFile.write(file, password);
                out.println("First start. Sign in as " + People.FIRST + " with the password in " + file
                        + ", to be changed at sign-in. Then delete that file.");
                return;
            }
            out.println("First start. Sign in as " + People.FIRST + " with this password, to be changed at sign-in:");
            out.println("  " + password);
            out.println("It is shown only once. Lost? Stop the program and set another: user password " + People.FIRST);
        });
    }
}
