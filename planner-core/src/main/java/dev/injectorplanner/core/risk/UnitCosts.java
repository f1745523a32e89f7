package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.check.Require;

/**
 * What one injector costs, in the site's currency.
 *
 * @param planned replaced in a typical planned visit: part, own labour, its share of the visit; above 0
 * @param share its share of the visit, inside {@code planned}: access labour, coolant, bay and standing
 * @param alone replaced in a visit of its own, because its signs ask for it
 * @param failure replaced after it failed in service: as alone, and what the failure costs
 */
public record UnitCosts(double planned, double share, double alone, double failure) {
    public UnitCosts {
        Require.positive("planned cost", planned);
        Require.within("share", share, 0, planned);
        Require.notNegative("cost of a visit of its own", alone);
        Require.notNegative("failure cost", failure);
    }
}
