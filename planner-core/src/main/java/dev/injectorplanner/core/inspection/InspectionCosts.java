package dev.injectorplanner.core.inspection;

import dev.injectorplanner.core.check.Require;

/**
 * Costs that inspection weighs against each other, in one currency.
 *
 * @param inspect cost of one test of a truck
 * @param planned cost of replacing an injector whose defect a test found
 * @param failure cost of a defect that failed in service
 */
public record InspectionCosts(double inspect, double planned, double failure) {
    public InspectionCosts {
        Require.notNegative("inspection cost", inspect);
        Require.notNegative("planned cost", planned);
        Require.notNegative("failure cost", failure);
    }
}
