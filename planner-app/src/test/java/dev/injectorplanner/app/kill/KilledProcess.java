package dev.injectorplanner.app.kill;

import dev.injectorplanner.app.store.StoreSettings;
import java.io.BufferedReader;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A main class in a process of its own that is killed (SIGKILL) at a moment its output names. */
public final class KilledProcess {
    private KilledProcess() {}

    /**
     * Runs it until it ends or is killed.
     *
     * @param main gets the store's address, user and password, then the arguments
     * @param moment what was said so far gives how long to wait before the kill, or nothing to go on
     * @return the lines it said in all, those after the kill was sent included
     */
    public static List<String> run(
            Class<?> main,
            StoreSettings store,
            List<String> arguments,
            Function<List<String>, Optional<Duration>> moment)
            throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                main.getName(),
                store.url(),
                store.user(),
                store.password()));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> said = new ArrayList<>();
        try (BufferedReader lines = process.inputReader()) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said.add(line);
                Optional<Duration> wait = moment.apply(said);
                if (wait.isPresent()) {
                    Thread.sleep(wait.get().toMillis());
                    process.toHandle().destroyForcibly(); // leaves our end of the pipe open
                }
            }
        }
        process.waitFor();
        return said;
    }

    /** The settings that were handed to the process. */
    public static StoreSettings store(String[] arguments) {
        return new StoreSettings(arguments[0], arguments[1], arguments[2]);
    }
}
