package dev.injectorplanner.core.visit;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.due.DueItem;
import java.util.List;

/**
 * One truck in one bay for one set of cylinders and ride-along tasks.
 *
 * @param truck the truck
 * @param depot where
 * @param family its engine
 * @param week the ISO week
 * @param cylinders cylinders whose injectors are replaced, ascending; empty for an inspection or a task alone
 * @param steps access steps in order of taking off
 * @param tasks scheduled services done along
 * @param inspection whether the injectors are tested
 * @param labourHours labour: union of the steps, own labour of the cylinders, tasks, inspection
 * @param drainedLitres coolant that comes out: the largest drain of the steps
 * @param dueItems what it answers, most pressing first
 * @param why why these cylinders and why this week, in words
 * @param diagnosis whether it looks for the cause of a safety fault: short, without parts, before any other visit of the truck
 */
public record Visit(
        String truck,
        String depot,
        String family,
        IsoWeek week,
        List<Integer> cylinders,
        List<String> steps,
        List<String> tasks,
        boolean inspection,
        double labourHours,
        double drainedLitres,
        List<DueItem> dueItems,
        String why,
        boolean diagnosis) {
    /** What a diagnosis visit does, among its tasks. */
    public static final String DIAGNOSIS = "diagnosis";

    public Visit {
        cylinders = List.copyOf(cylinders);
        steps = List.copyOf(steps);
        tasks = List.copyOf(tasks);
        Require.notNegative("labour_hours", labourHours);
        Require.notNegative("drained_litres", drainedLitres);
        dueItems = List.copyOf(dueItems);
    }

    /** An ordinary visit. */
    public Visit(
            String truck,
            String depot,
            String family,
            IsoWeek week,
            List<Integer> cylinders,
            List<String> steps,
            List<String> tasks,
            boolean inspection,
            double labourHours,
            double drainedLitres,
            List<DueItem> dueItems,
            String why) {
        this(
                truck,
                depot,
                family,
                week,
                cylinders,
                steps,
                tasks,
                inspection,
                labourHours,
                drainedLitres,
                dueItems,
                why,
                false);
    }

    /** {@link #dueItems} under its earlier name. */
    public List<DueItem> findings() {
        return dueItems;
    }
}
