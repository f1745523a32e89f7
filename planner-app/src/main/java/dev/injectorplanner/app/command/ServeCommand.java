package dev.injectorplanner.app.command;

import dev.injectorplanner.app.Application;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.app.web.WebApp;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Pages and timed jobs, until it is told to stop. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Runs the timed jobs and serves the pages, until it is stopped (Ctrl-C).")
final class ServeCommand implements Callable<Integer> {
    private static final int MOST_PORT = 65_535;

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
            description = "Address to listen on, of this machine itself (default: ${DEFAULT-VALUE}).")
    private String address;

    @Override
    public Integer call() throws InterruptedException {
        String host = loopback();
        if (port < 0 || port > MOST_PORT) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--port " + port + ": is no port. Mend: choose one from 1 to " + MOST_PORT + ".");
        }
        var jobs = settings.jobs();
        StoreSettings place = store.settings();
        LoggerFactory.getLogger(ServeCommand.class).debug("Opening {}", place); // before a second thread logs
        var opening = CompletableFuture.supplyAsync(() -> Application.open(place));
        try (RunningApp running = WebApp.start(opening, jobs, host, port)) {
            PrintWriter out = spec.commandLine().getOut();
            long up = System.currentTimeMillis()
                    - ManagementFactory.getRuntimeMXBean().getStartTime();
            out.printf("Ready on %s after %.1f s. Stop with Ctrl-C.%n", running.address(), up / 1000.0);
            out.flush();
            running.await();
        }
        return 0;
    }

    /** Without sign-in whoever reaches the pages may do all: so only this machine reaches them. */
    private String loopback() {
        try {
            InetAddress asked = InetAddress.getByName(address);
            if (asked.isLoopbackAddress()) {
                return asked.getHostAddress();
            }
        } catch (UnknownHostException e) {
            throw new ParameterException(
                    spec.commandLine(), "--address " + address + ": is no address. Mend: write 127.0.0.1.", e);
        }
        throw new ParameterException(
                spec.commandLine(),
                "--address " + address + ": there is no sign-in yet, so the pages are for this machine alone."
                        + " Mend: leave it out, or write 127.0.0.1.");
    }
}
