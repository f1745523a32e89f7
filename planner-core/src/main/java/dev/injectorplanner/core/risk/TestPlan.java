package dev.injectorplanner.core.risk;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * When testing a truck's injectors pays. Its costs are without labour and standing, which depend on whether it rides along.
 *
 * @param cost what testing in each week costs against not testing in the plan: cost[week]; below zero it saves
 * @param worth the part of it that each cylinder saves, by cylinder; a cylinder replaced in the same visit saves nothing
 * @param dueWeek week in which a visit for the test alone pays most, or null where none does within the plan
 * @param saves what the result is worth in that week; 0 where there is none
 * @param costs what the test alone costs, labour, bay and standing
 * @param defectChance chance that at least one of the injectors has a hidden defect today
 */
public record TestPlan(
        double[] cost,
        Map<Integer, double[]> worth,
        @Nullable Integer dueWeek,
        double saves,
        double costs,
        double defectChance) {
    public TestPlan {
        cost = cost.clone();
        worth = Collections.unmodifiableMap(new TreeMap<>(worth)); // sums must not hang on a hash order
    }

    @Override
    public double[] cost() {
        return cost.clone();
    }
}
