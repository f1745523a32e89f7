package dev.injectorplanner.core.schedule.exact;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleChecker;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Schedules beside those of the plain model (one Boolean an option, one linear limit a week, CP-SAT with two workers) at
 * equal time: {@code mvn -pl planner-core -Pbenchmark test -Dtest=ScheduleBenchmark -Dschedule.instances=FOLDER}; the
 * folder holds files in the format of the {@code schedule} command. Optional: {@code -Dschedule.work=3,8}.
 */
@Tag("benchmark")
class ScheduleBenchmark {
    private static final int THREADS = 2;

    private record Row(double cost, double bound, double seconds) {
        double gapPercent() {
            return cost == bound ? 0 : 100 * (cost - bound) / Math.abs(cost);
        }
    }

    @Test
    void besideThePlainModel() throws IOException {
        String folder = System.getProperty("schedule.instances");
        Assumptions.assumeTrue(folder != null, "no -Dschedule.instances=FOLDER");
        double[] works = Arrays.stream(
                        System.getProperty("schedule.work", "3,8").split(","))
                .mapToDouble(Double::parseDouble)
                .toArray();
        System.out.printf(
                "%n%d threads, %d cores%n%-24s %-8s %14s %14s %8s %8s%n",
                THREADS,
                Runtime.getRuntime().availableProcessors(),
                "instance",
                "model",
                "objective",
                "bound",
                "gap %",
                "seconds");
        try (var files = Files.list(Path.of(folder))) {
            files.filter(file -> file.toString().endsWith(".json")).sorted().forEach(file -> rows(file, works));
        }
    }

    private static void rows(Path file, double[] works) {
        String name = file.getFileName().toString();
        ScheduleRequest request;
        try {
            request = InstanceText.read(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (double work : works) {
            Row ours = ours(request, work);
            print(name, "ours", ours);
            print(name, "plain", plain(request, Math.max(1, ours.seconds())));
        }
    }

    private static void print(String name, String model, Row row) {
        System.out.printf(
                Locale.ROOT,
                "%-24s %-8s %,14.0f %,14.0f %8.3f %8.2f%n",
                name,
                model,
                row.cost(),
                row.bound(),
                row.gapPercent(),
                row.seconds());
    }

    private static Row ours(ScheduleRequest request, double work) {
        long start = System.nanoTime();
        Schedule schedule = new ExactScheduler(new SearchLimits(work, 0, THREADS, 1)).schedule(request);
        double seconds = (System.nanoTime() - start) * 1e-9;
        assertThat(ScheduleChecker.listViolations(request, schedule)).isEmpty();
        return new Row(schedule.cost(), schedule.bound(), seconds);
    }

    private static Row plain(ScheduleRequest request, double seconds) {
        long start = System.nanoTime();
        Problem problem =
                new Problem(request.trucks(), new boolean[request.trucks().size()], request.depots(), request.groups());
        int[] all = ExactScheduler.all(problem.options.length);
        CpModel model = new PartModel(problem, Scope.whole(problem), all, CostScale.of(problem, all)).model();
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(THREADS).setLinearizationLevel(2).setMaxTimeInSeconds(seconds);
        CpSolverStatus status = solver.solve(model);
        assertThat(status).isIn(CpSolverStatus.FEASIBLE, CpSolverStatus.OPTIMAL);
        return new Row(solver.objectiveValue(), solver.bestObjectiveBound(), (System.nanoTime() - start) * 1e-9);
    }
}
