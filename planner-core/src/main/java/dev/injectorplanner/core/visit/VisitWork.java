package dev.injectorplanner.core.visit;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.units.Figures;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The work of a visit before it has a week.
 *
 * @param truck the truck
 * @param cylinders cylinders whose injectors are replaced, ascending
 * @param steps access steps in order of taking off
 * @param tasks interval tasks done along
 * @param inspection whether the injectors are tested
 * @param labourHours labour of all of it
 * @param drainedLitres coolant that comes out
 * @param findings what it answers, most pressing first, at least one
 * @param leftOut what it does not answer
 */
public record VisitWork(
        Truck truck,
        List<Integer> cylinders,
        List<String> steps,
        List<String> tasks,
        boolean inspection,
        double labourHours,
        double drainedLitres,
        List<DueFinding> findings,
        List<LeftOut> leftOut) {
    public VisitWork {
        cylinders = List.copyOf(cylinders);
        steps = List.copyOf(steps);
        tasks = List.copyOf(tasks);
        findings = List.copyOf(findings);
        leftOut = List.copyOf(leftOut);
    }

    /** The visit in a week. */
    public Visit in(IsoWeek week, String whyThisWeek) {
        return new Visit(
                truck.truck(),
                truck.depot(),
                truck.family(),
                week,
                cylinders,
                steps,
                tasks,
                inspection,
                labourHours,
                drainedLitres,
                findings,
                why() + " " + whyThisWeek);
    }

    private String why() {
        DueFinding first = findings.get(0);
        String subject = first.cylinder() != null
                ? "Cylinder " + first.cylinder()
                : first.task() != null ? first.task() : "The truck";
        String pressing = subject + ": " + first.evidence() + " (limit " + first.limit() + ", " + first.limitSource()
                + "), by " + first.by() + ".";
        int others = findings.size() - 1;
        String joins =
                others == 0 ? "" : " " + Figures.count(others, "other finding joins", "other findings join") + others();
        return pressing + joins + riding();
    }

    private String others() {
        String more = cylinders.isEmpty()
                ? ""
                : ": cylinders " + cylinders.stream().map(String::valueOf).collect(Collectors.joining(", ")) + " share "
                        + Figures.count(steps.size(), "access step", "access steps");
        return more + ".";
    }

    private String riding() {
        return tasks.isEmpty() || cylinders.isEmpty() && !inspection
                ? ""
                : " Rides along: " + String.join(", ", tasks) + ".";
    }
}
