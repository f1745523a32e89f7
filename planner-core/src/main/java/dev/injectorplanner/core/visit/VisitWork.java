package dev.injectorplanner.core.visit;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.Action;
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
        int others = findings.size() - 1;
        String joins = others == 0 ? "" : " " + Figures.count(others, "more finding joins.", "more findings join.");
        return pressing(findings.get(0)) + joins + shared() + riding();
    }

    private static String pressing(DueFinding first) {
        String subject = first.cylinder() != null
                ? "Cylinder " + first.cylinder()
                : first.task() != null ? first.task() : "The truck";
        boolean sentence = first.action() != Action.REPLACE;
        return subject + ": " + first.evidence() + "; " + (sentence ? "" : "limit ") + first.limit() + " ("
                + first.limitSource() + "); due " + first.by() + ".";
    }

    private String shared() {
        return cylinders.size() < 2
                ? ""
                : " Cylinders " + cylinders.stream().map(String::valueOf).collect(Collectors.joining(", ")) + " share "
                        + Figures.count(steps.size(), "access step", "access steps") + ".";
    }

    private String riding() {
        return tasks.isEmpty() || cylinders.isEmpty() && !inspection
                ? ""
                : " Rides along: " + String.join(", ", tasks) + ".";
    }
}
