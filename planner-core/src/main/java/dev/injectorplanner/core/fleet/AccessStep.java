package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import java.util.List;

/**
 * Something taken off or drained to reach cylinders. Putting it back is within its hours.
 *
 * @param family the engine family it belongs to
 * @param step its name, one of a kind within the family
 * @param order place in the sequence of taking off; steps that share it follow each other by name
 * @param hours labour, off and on again
 * @param cylinders the cylinders it serves, ascending; empty means all
 * @param drainsCoolantPercent share of the cooling system that comes out, percent of capacity
 * @param cautions what to mind, for the bay sheet
 */
public record AccessStep(
        String family,
        String step,
        int order,
        double hours,
        List<Integer> cylinders,
        double drainsCoolantPercent,
        String cautions) {
    public AccessStep {
        family = Require.name("family", family);
        step = Require.name("step", step);
        Require.within("order", order, 1, 999);
        Require.within("hours", hours, 0, 100);
        cylinders = cylinders.stream().sorted().distinct().toList();
        cylinders.forEach(c -> Require.within("cylinders", c, 1, EngineFamily.MOST_CYLINDERS));
        Require.within("drains_coolant_percent", drainsCoolantPercent, 0, 100);
        cautions = Require.text("cautions", cautions);
    }

    /** Whether this step is in the way of a cylinder. */
    public boolean serves(int cylinder) {
        return cylinders.isEmpty() || cylinders.contains(cylinder);
    }
}
