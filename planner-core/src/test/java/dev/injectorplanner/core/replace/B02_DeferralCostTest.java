package dev.injectorplanner.core.replace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.life.WeibullLife;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class B02_DeferralCostTest {

    /** Constant hazard r, by hand: [(failure - planned) r - rate] (1 - exp(-r w)) / r. */
    @Test
    void constantHazardInClosedForm() {
        DeferralCost cost = new DeferralCost(new WeibullLife(1, 1000), 1, 100, 600, 0.3);
        double expected = (500 * 0.001 - 0.3) * (1 - Math.exp(-0.25)) / 0.001;
        assertThat(cost.cost(400, 650)).isCloseTo(expected, withinPercentage(1e-9));
        // twice the hazard
        DeferralCost worse = new DeferralCost(new WeibullLife(1, 1000), 2, 100, 600, 0.3);
        assertThat(worse.cost(400, 650))
                .isCloseTo((500 * 0.002 - 0.3) * (1 - Math.exp(-0.5)) / 0.002, withinPercentage(1e-9));
        assertThat(worse.bestMoment(0, 250).age()).isEqualTo(250);
        DeferralCost cheap = new DeferralCost(new WeibullLife(1, 1000), 1, 100, 300, 0.3);
        assertThat(cheap.bestMoment(0, 250).age()).isInfinite();
        assertThat(cheap.bestMoment(0, 250).cost()).isCloseTo(200 - 0.3 * 1000, within(1e-6));
    }

    /**
     * Shape 2, by hand: the second part is rate x scale x sqrt(pi) / 2 x exp(H(a)) x [erf(x / scale) - erf(a / scale)],
     * here from 0 to the scale, erf(1) = 0.8427007929497149 (Abramowitz and Stegun 1964, table 7.1).
     */
    @Test
    void shapeTwoByTheErrorFunction() {
        DeferralCost cost = new DeferralCost(new WeibullLife(2, 1000), 1, 100, 600, 0.3);
        double expected = 500 * (1 - Math.exp(-1)) - 0.3 * 1000 * Math.sqrt(Math.PI) / 2 * 0.8427007929497149;
        assertThat(cost.cost(0, 1000)).isCloseTo(expected, withinPercentage(1e-9));
    }

    /** Dekker's marginal cost: zero slope, hence least cost, where (failure - planned) x hazard equals the rate. */
    @Test
    void leastWhereTheMarginalCostMeetsTheRate() {
        WeibullLife life = new WeibullLife(2.6, 310_000);
        AgeReplacementPolicy policy = AgeReplacement.best(life, 1450, 6200);
        DeferralCost fresh = new DeferralCost(life, 1, 1450, 6200, policy.costRate());
        DeferralCost.Moment best = fresh.bestMoment(40_000, 40_000);
        // without a condition the best moment is the age of the policy itself
        assertThat(best.age()).isCloseTo(policy.age(), withinPercentage(1e-5));
        assertThat(best.cost()).isNegative();
        assertThat(fresh.cost(40_000, best.age() - 500)).isGreaterThan(best.cost());
        assertThat(fresh.cost(40_000, best.age() + 500)).isGreaterThan(best.cost());
        DeferralCost faulty = new DeferralCost(life, 4, 1450, 6200, policy.costRate());
        DeferralCost.Moment sooner = faulty.bestMoment(40_000, 40_000);
        assertThat(4 * (6200 - 1450) * life.hazard(sooner.age())).isCloseTo(policy.costRate(), withinPercentage(1e-6));
        assertThat(sooner.age()).isLessThan(best.age());
        // left for later than its best moment: it waits no longer than it must
        assertThat(faulty.bestMoment(40_000, 150_000).age()).isEqualTo(150_000);
    }

    /** From new to the policy's age the deferral cost is minus the planned cost: what the first cycle has earned. */
    @Test
    void oneCycleOfTheBestPolicyEarnsThePlannedCost() {
        WeibullLife life = new WeibullLife(2.6, 310_000);
        AgeReplacementPolicy policy = AgeReplacement.best(life, 1450, 6200);
        DeferralCost fresh = new DeferralCost(life, 1, 1450, 6200, policy.costRate());
        assertThat(fresh.cost(0, policy.age())).isCloseTo(-1450, withinPercentage(1e-6));
    }

    @Test
    void weeksAtOnceAreTheWeeksOneByOne() {
        long seed = 97;
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 200; round++) {
            WeibullLife life = new WeibullLife(random.nextDouble(0.5, 6), random.nextDouble(1e4, 1e6));
            DeferralCost cost =
                    new DeferralCost(life, random.nextDouble(0.5, 9), 500, 4_700, random.nextDouble(0, 0.1));
            double age = random.nextDouble(0, 1.5) * life.scale();
            double[] until = new double[26];
            for (int week = 0; week < until.length; week++) {
                until[week] = age + 0.01 * life.scale() * week;
            }
            double[] costs = cost.costs(age, until);
            assertThat(costs[0]).isEqualTo(0);
            for (int week = 0; week < until.length; week++) {
                assertThat(costs[week])
                        .as("seed %d round %d week %d", seed, round, week)
                        .isCloseTo(cost.cost(age, until[week]), within(1e-6));
            }
            DeferralCost.Moment best = cost.bestMoment(age, until[10]);
            for (int week = 10; week < until.length; week++) {
                assertThat(best.cost()).isLessThanOrEqualTo(costs[week] + 1e-6);
            }
            assertThat(best.cost()).isLessThanOrEqualTo(cost.cost(age, Double.POSITIVE_INFINITY) + 1e-6);
        }
    }

    @Test
    void refusesAMomentInThePast() {
        DeferralCost cost = new DeferralCost(new WeibullLife(2, 1000), 1, 100, 600, 0.3);
        assertThatThrownBy(() -> cost.cost(500, 400)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> cost.costs(0, new double[] {5, 4})).isInstanceOf(InvalidValueException.class);
    }
}
