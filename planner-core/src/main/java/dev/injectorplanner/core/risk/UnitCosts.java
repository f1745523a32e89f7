package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.check.Require;

/**
 * What one injector costs.
 *
 * @param planned replaced in a planned visit: part, own labour, its share of the access labour; above 0
 * @param failure replaced after it failed in service: the same and what the failure costs
 */
public record UnitCosts(double planned, double failure) {
    public UnitCosts {
        Require.positive("planned cost", planned);
        Require.notNegative("failure cost", failure);
    }
}
