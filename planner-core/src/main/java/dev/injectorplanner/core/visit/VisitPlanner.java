package dev.injectorplanner.core.visit;

import dev.injectorplanner.core.finding.Action;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns the findings of a truck into the work of one visit. The visit turns on the most pressing injector work or test,
 * or on the most pressing task where there is neither; what falls due within {@link #JOIN_WEEKS} after that day, or up
 * to {@link #BEFORE_WEEKS} before it, joins. The rest is left with its reason.
 */
public final class VisitPlanner {
    /** Work due up to so many weeks after the most pressing joins the visit. */
    public static final int JOIN_WEEKS = 12;

    /** A test due up to so many weeks after joins: made earlier, it would not count for the warranty's end. */
    public static final int TEST_JOIN_WEEKS = 8;

    /** A task due up to so many weeks before the injector work waits for it. */
    public static final int BEFORE_WEEKS = 4;

    private final FleetIndex index;
    private final double inspectionHours;

    /** @param inspectionHours labour of testing a truck's injectors */
    public VisitPlanner(FleetIndex index, double inspectionHours) {
        this.index = index;
        this.inspectionHours = inspectionHours;
    }

    /**
     * The work of a truck's visit.
     *
     * @param findings of this truck, most pressing first, at least one
     * @param today what is overdue counts as due today
     */
    public VisitWork workOf(Truck truck, List<DueFinding> findings, LocalDate today) {
        DueFinding turn = findings.stream()
                .filter(finding -> finding.action() != Action.SERVICE)
                .findFirst()
                .orElse(findings.get(0));
        LocalDate turnDay = turn.by().isBefore(today) ? today : turn.by();
        List<DueFinding> joined = new ArrayList<>();
        List<LeftOut> left = new ArrayList<>();
        for (DueFinding finding : findings) {
            String reason = finding == turn ? "" : whyNot(truck, finding, turn, turnDay);
            if (reason.isEmpty()) {
                joined.add(finding);
            } else {
                left.add(new LeftOut(finding, reason));
            }
        }
        return work(truck, joined, left);
    }

    private String whyNot(Truck truck, DueFinding finding, DueFinding turn, LocalDate turnDay) {
        int joins = finding.action() == Action.INSPECT ? TEST_JOIN_WEEKS : JOIN_WEEKS;
        if (finding.by().isAfter(turnDay.plusWeeks(joins))) {
            return "due more than " + joins + " weeks after this truck's visit: a later plan places it";
        }
        if (finding.action() != Action.SERVICE) {
            return "";
        }
        if (!rides(truck, finding)) {
            return "does not ride along with other work: plan it by itself";
        }
        if (turn.action() == Action.SERVICE && !rides(truck, turn)) {
            return "the task of this truck's visit, " + turn.task() + ", takes no other along";
        }
        return finding.by().isBefore(turnDay.minusWeeks(BEFORE_WEEKS))
                ? "due more than " + BEFORE_WEEKS + " weeks before this truck's visit: do it at ordinary service"
                : "";
    }

    private boolean rides(Truck truck, DueFinding finding) {
        return taskOf(truck, finding).rides();
    }

    private IntervalTask taskOf(Truck truck, DueFinding finding) {
        return index.intervalsOf(truck.family()).stream()
                .filter(task -> task.task().equals(finding.task()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "family " + truck.family() + " has no task \"" + finding.task() + "\""));
    }

    private VisitWork work(Truck truck, List<DueFinding> joined, List<LeftOut> left) {
        EngineFamily family = index.family(truck.family());
        AccessModel access = new AccessModel(family, index.accessOf(family.family()));
        List<Integer> cylinders = joined.stream()
                .filter(finding -> finding.action() == Action.REPLACE && finding.cylinder() != null)
                .map(DueFinding::cylinder)
                .sorted()
                .distinct()
                .toList();
        List<IntervalTask> tasks = joined.stream()
                .filter(finding -> finding.action() == Action.SERVICE)
                .map(finding -> taskOf(truck, finding))
                .toList();
        boolean inspection = joined.stream().anyMatch(finding -> finding.action() == Action.INSPECT);
        double hours = access.labourHours(cylinders)
                + tasks.stream().mapToDouble(IntervalTask::hours).sum()
                + (inspection ? inspectionHours : 0);
        return new VisitWork(
                truck,
                cylinders,
                access.stepsFor(cylinders).stream().map(step -> step.step()).toList(),
                tasks.stream().map(IntervalTask::task).toList(),
                inspection,
                Figures.tidy(hours),
                Figures.tidy(access.drainedLitres(cylinders)),
                joined,
                left);
    }
}
