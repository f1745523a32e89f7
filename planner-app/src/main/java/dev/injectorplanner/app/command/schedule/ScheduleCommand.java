package dev.injectorplanner.app.command.schedule;

import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleChecker;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code schedule FILE}. */
@Command(
        name = "schedule",
        mixinStandardHelpOptions = true,
        description = {
            "Solves a schedule instance: at most one option per truck, weekly hours with overtime at a higher price, lowest cost.",
            "Prints the cost, a proven lower bound, the gap between them, and the choices.",
            "--seconds sets the amount of work, counted in steps, so the same file gives the same answer"
                    + " on any number of cores; only a much slower machine is stopped: time limit reached."
        })
public final class ScheduleCommand implements Callable<Integer> {
    private static final int REFUSED = 1;
    private static final double MOST_SECONDS = 86_400;
    private static final double START_AND_END_SECONDS = 0.6;
    private static final double LEAST_SECONDS = 0.1;
    private static final double WORK_PER_SECOND = 0.8;
    private static final int MOST_THREADS = 8;
    private static final long SEED = 1;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "JSON file with one depot's weeks and options")
    private Path file;

    @Option(
            names = "--seconds",
            defaultValue = "10",
            description = "time limit, above 0 and up to 86,400 (default: 10)")
    private double seconds;

    @Option(names = "--json", description = "print one JSON object and nothing else")
    private boolean json;

    @Override
    public Integer call() {
        if (!(seconds > 0 && seconds <= MOST_SECONDS)) {
            throw new ParameterException(
                    spec.commandLine(), "--seconds must be above 0 and at most 86400, not " + seconds + ".");
        }
        long start = System.nanoTime();
        ScheduleRequest request;
        try {
            request = InstanceFile.read(file);
        } catch (InstanceRefusedException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return REFUSED;
        }
        Schedule schedule = solve(request, start);
        double taken = secondsSince(start);
        String answer = json
                ? SchedulePrinter.json(schedule, taken)
                : SchedulePrinter.text(String.valueOf(file.getFileName()), schedule, taken);
        spec.commandLine().getOut().println(answer);
        return 0;
    }

    private Schedule solve(ScheduleRequest request, long start) {
        double most = Math.max(LEAST_SECONDS, seconds - START_AND_END_SECONDS);
        int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
        SearchLimits limits = new SearchLimits(WORK_PER_SECOND * seconds, 0, threads, SEED);
        Schedule schedule = new ExactScheduler(limits, () -> most - secondsSince(start)).schedule(request);
        List<String> violations = ScheduleChecker.listViolations(request, schedule);
        if (!violations.isEmpty()) {
            throw new IllegalStateException("the schedule breaks its limits: " + String.join("; ", violations));
        }
        return schedule;
    }

    private static double secondsSince(long start) {
        return (System.nanoTime() - start) * 1e-9;
    }
}
