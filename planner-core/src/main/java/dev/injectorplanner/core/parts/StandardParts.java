package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.JobPart;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Parts that work on a family takes for certain, by table job_parts, line by line: what a job really used follows from the
 * cylinders and services really done. Injectors, and parts that only break by chance, are not among them.
 */
public final class StandardParts {
    private final List<Line> lines;

    private StandardParts(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    /**
     * A part and what it is counted by.
     *
     * @param part part number
     * @param quantity pieces each time
     * @param each whether it is counted for each cylinder done
     * @param anyOf else counted once where any of these cylinders is done; empty where a service decides
     * @param task the service that takes it, or null
     */
    public record Line(
            String part,
            double quantity,
            boolean each,
            List<Integer> anyOf,
            @Nullable String task) {
        public Line {
            anyOf = List.copyOf(anyOf);
        }

        double pieces(Collection<Integer> cylinders, Collection<String> tasks) {
            if (task != null) {
                return tasks.contains(task) ? quantity : 0;
            }
            return each
                    ? quantity * cylinders.stream().distinct().count()
                    : anyOf.stream().anyMatch(cylinders::contains) ? quantity : 0;
        }
    }

    /** Those of an engine family. */
    public static StandardParts of(FleetIndex index, EngineFamily family) {
        List<Line> lines = new ArrayList<>();
        for (JobPart job : index.jobPartsOf(family.family())) {
            if (job.chance() >= 1) {
                lines.addAll(linesOf(job, index, family));
            }
        }
        return new StandardParts(lines);
    }

    private static List<Line> linesOf(JobPart job, FleetIndex index, EngineFamily family) {
        return switch (job.per()) {
            case CYLINDER -> List.of(new Line(job.part(), job.quantity(), true, family.allCylinders(), null));
            case BANK ->
                family.banks().stream()
                        .map(Bank::cylinders)
                        .map(bank -> any(job, bank))
                        .toList();
            case VISIT -> List.of(any(job, family.allCylinders()));
            case STEP ->
                index.accessOf(family.family()).stream()
                        .filter(step -> step.step().equals(job.step()))
                        .map(step -> any(job, served(step, family)))
                        .toList();
            case TASK -> List.of(new Line(job.part(), job.quantity(), false, List.of(), job.task()));
        };
    }

    private static List<Integer> served(AccessStep step, EngineFamily family) {
        return family.allCylinders().stream().filter(step::serves).toList();
    }

    private static Line any(JobPart job, List<Integer> cylinders) {
        return new Line(job.part(), job.quantity(), false, cylinders, null);
    }

    public List<Line> lines() {
        return lines;
    }

    /** Pieces by part for the cylinders and services done; parts that are not needed have none. */
    public Map<String, Double> pieces(Collection<Integer> cylinders, Collection<String> tasks) {
        Map<String, Double> pieces = new TreeMap<>();
        for (Line line : lines) {
            double times = line.pieces(cylinders, tasks);
            if (times > 0) {
                pieces.merge(line.part(), times, Double::sum);
            }
        }
        return pieces;
    }
}
