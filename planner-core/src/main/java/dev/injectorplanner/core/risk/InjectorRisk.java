package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.history.Clock;

/**
 * Chance that one fitted injector fails in service if it is left in, given that it is alive today.
 *
 * @param truck the truck
 * @param depot its depot
 * @param cylinder its cylinder
 * @param part part number
 * @param origin new or reman
 * @param clock what its age is counted in
 * @param age age today in the clock's unit
 * @param condition what faults and tests say, in words
 * @param multiplier on the hazard of an average injector of its age, above 0
 * @param multiplierSource whose multiplier it is: fitted to the fleet's records, or "planner default"
 * @param chance4 chance within 4 weeks, 0..1
 * @param chance12 chance within 12 weeks, at least {@code chance4}
 * @param chance26 chance within 26 weeks, at least {@code chance12}
 */
public record InjectorRisk(
        String truck,
        String depot,
        int cylinder,
        String part,
        Origin origin,
        Clock clock,
        double age,
        String condition,
        double multiplier,
        String multiplierSource,
        double chance4,
        double chance12,
        double chance26) {
    private static final double[] DAYS = {0, 28, 84, 182};

    public InjectorRisk {
        Require.notNegative("age", age);
        Require.positive("multiplier", multiplier);
        Require.within("chance4", chance4, 0, 1);
        Require.within("chance12", chance12, chance4, 1);
        Require.within("chance26", chance26, chance12, 1);
    }

    /**
     * Chance within this many days: the cumulative hazard runs straight between today, 4, 12 and 26 weeks, and on at the last
     * pace beyond.
     *
     * @param days zero or more
     * @return 0..1, exactly 0 for 0 days, rising with the days
     */
    public double chanceWithin(double days) {
        Require.notNegative("days", days);
        double[] hazards = {0, -Math.log1p(-chance4), -Math.log1p(-chance12), -Math.log1p(-chance26)};
        int to = 1;
        while (to < DAYS.length - 1 && days > DAYS[to]) {
            to++;
        }
        double span = DAYS[to] - DAYS[to - 1];
        double slope = hazards[to] == hazards[to - 1] ? 0 : (hazards[to] - hazards[to - 1]) / span;
        double hazard = slope * (days - DAYS[to - 1]);
        return -Math.expm1(-(hazards[to - 1] + hazard));
    }
}
