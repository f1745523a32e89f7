package dev.injectorplanner.core.replace;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.LifeModel;
import dev.injectorplanner.core.life.WeibullLife;
import dev.injectorplanner.core.numeric.Search;
import java.util.function.DoubleUnaryOperator;

/**
 * Age replacement: a unit is replaced at failure or at a fixed age, whichever comes first. Source: Barlow and Hunter
 * (1960), Optimum preventive maintenance policies, Operations Research 8:90-100; Barlow and Proschan (1965),
 * Mathematical Theory of Reliability, chapter 4. The life is that of a new unit: no condition multiplier.
 */
public final class AgeReplacement {
    private static final int SCANNED = 400;

    private AgeReplacement() {}

    /**
     * Long-run cost per unit of age when replacing at {@code age}: [planned S + failure F] / integral of S.
     *
     * @param planned cost of a planned replacement, above 0
     * @param failure cost of a replacement after a failure in service, above 0
     * @param age above 0
     */
    public static double costRate(LifeModel life, double planned, double failure, double age) {
        guard(planned, failure);
        Require.positive("age", age);
        double survival = life.survival(age);
        return (planned * survival + failure * (1 - survival)) / life.meanLifeWithin(age);
    }

    /**
     * The age of least cost rate: where hazard x integral of S - F = planned / (failure - planned). There is none where
     * failures are no dearer or the hazard does not rise (shape 1 or less); an age that no unit reaches counts as none.
     */
    public static AgeReplacementPolicy best(LifeModel life, double planned, double failure) {
        guard(planned, failure);
        double runToFailure = failure / life.meanLife();
        AgeReplacementPolicy never = new AgeReplacementPolicy(null, runToFailure, runToFailure);
        boolean falling = life instanceof WeibullLife weibull && weibull.shape() <= 1;
        if (failure <= planned || falling) {
            return never;
        }
        double longest = life.longestLife();
        double shortest = longest * 1e-9;
        double scanned = Search.leastByRatio(age -> costRate(life, planned, failure, age), shortest, longest, SCANNED);
        double age = refined(life, planned / (failure - planned), scanned);
        double rate = costRate(life, planned, failure, age);
        boolean pays = rate < runToFailure * (1 - 1e-13) && age < longest * (1 - 1e-6);
        return pays ? new AgeReplacementPolicy(age, rate, runToFailure) : never;
    }

    private static double refined(LifeModel life, double ratio, double near) {
        DoubleUnaryOperator balance =
                age -> life.hazard(age) * life.meanLifeWithin(age) - (1 - life.survival(age)) - ratio;
        double low = near * 0.99;
        double high = near * 1.01;
        return balance.applyAsDouble(low) < 0 && balance.applyAsDouble(high) > 0
                ? Search.root(balance, low, high)
                : near;
    }

    private static void guard(double planned, double failure) {
        Require.positive("planned cost", planned);
        Require.positive("failure cost", failure);
    }
}
