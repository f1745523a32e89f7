package dev.injectorplanner.app.kill;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.store.StoreSettings;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A main class in a process of its own, made to be killed (SIGKILL). */
public final class KilledProcess implements AutoCloseable {
    private final Process process;

    private KilledProcess(Process process) {
        this.process = process;
    }

    /**
     * Starts one that goes on until its input ends; what it writes to its standard error is seen.
     *
     * @param wrapper what comes before the command, such as a tool that holds it to one core
     * @param options of its Java
     */
    public static KilledProcess start(List<String> wrapper, List<String> options, Class<?> main, List<String> arguments)
            throws IOException {
        return new KilledProcess(new ProcessBuilder(command(wrapper, options, main, arguments))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

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
        List<String> all = new ArrayList<>(List.of(store.url(), store.user(), store.password()));
        all.addAll(arguments);
        KilledProcess running = new KilledProcess(new ProcessBuilder(command(List.of(), List.of(), main, all))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start());
        List<String> said = new ArrayList<>();
        try (BufferedReader lines = running.process.inputReader()) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said.add(line);
                Optional<Duration> wait = moment.apply(said);
                if (wait.isPresent()) {
                    Thread.sleep(wait.get().toMillis());
                    running.kill();
                }
            }
        }
        running.process.waitFor();
        return said;
    }

    private static List<String> command(
            List<String> wrapper, List<String> options, Class<?> main, List<String> arguments) {
        List<String> command = new ArrayList<>(wrapper);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(arguments);
        return command;
    }

    /** Waits for its next line, which must be this one. */
    public void awaitLine(String line) throws IOException {
        assertThat(process.inputReader().readLine()).isEqualTo(line);
    }

    /** Kills it; what it said before can still be read. */
    public void kill() {
        process.toHandle().destroyForcibly(); // leaves our end of the pipe open
    }

    public long pid() {
        return process.pid();
    }

    /** Processor time used so far; zero where it is gone or the system does not tell. */
    public Duration processorTime() {
        return process.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** Ends its input and waits for its end. */
    @Override
    public void close() throws Exception {
        process.outputWriter().close();
        process.waitFor();
    }

    /** The settings that were handed to the process. */
    public static StoreSettings store(String[] arguments) {
        return new StoreSettings(arguments[0], arguments[1], arguments[2]);
    }
}
