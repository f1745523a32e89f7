package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.Rule;

/**
 * What one of the site's own rules costs: two plans of the same fleet, with it and without it.
 *
 * @param rule the rule
 * @param moneyWith expected money of the plan that keeps it, against doing nothing, in the site's currency
 * @param moneyWithout the same of the plan without it
 * @param visitsWith visits of the plan that keeps it
 * @param visitsWithout visits without it
 * @param injectorsWith injectors replaced in the plan that keeps it
 * @param injectorsWithout injectors replaced without it
 */
public record RulePrice(
        Rule rule,
        double moneyWith,
        double moneyWithout,
        int visitsWith,
        int visitsWithout,
        int injectorsWith,
        int injectorsWithout) {
    /** What keeping the rule costs in the horizon, in expected money; below zero it saves. */
    public double price() {
        return moneyWith - moneyWithout;
    }
}
