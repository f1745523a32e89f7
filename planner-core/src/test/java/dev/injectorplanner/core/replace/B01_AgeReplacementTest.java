package dev.injectorplanner.core.replace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.life.DataTable;
import dev.injectorplanner.core.life.LifeModel;
import dev.injectorplanner.core.life.WeibullLife;
import org.junit.jupiter.api.Test;

class B01_AgeReplacementTest {

    /** Barlow and Hunter (1960), Barlow and Proschan (1965) chapter 4; digits computed with R 4.2.2, 12 decimals. */
    @Test
    void gridOfShapesAndCostRatios() {
        DataTable grid = DataTable.table("age-replacement-grid");
        assertThat(grid.size()).isEqualTo(15);
        for (int i = 0; i < grid.size(); i++) {
            WeibullLife life = new WeibullLife(grid.column("shape")[i], 1);
            double failure = grid.column("failure_over_planned")[i];
            AgeReplacementPolicy policy = AgeReplacement.best(life, 1, failure);
            assertThat(policy.age()).isCloseTo(grid.column("age_over_scale")[i], withinPercentage(1e-6));
            assertThat(policy.costRate()).isCloseTo(grid.column("cost_rate")[i], withinPercentage(1e-8));
            assertThat(policy.costRateRunToFailure())
                    .isCloseTo(grid.column("run_to_failure_rate")[i], withinPercentage(1e-8));
            // at the optimum the cost rate is the marginal cost: (failure - planned) x hazard
            assertThat((failure - 1) * life.hazard(policy.age())).isCloseTo(policy.costRate(), withinPercentage(1e-6));
        }
    }

    /** A life uniform over 0 to 40,000 km. */
    private record UniformLife(double longestLife) implements LifeModel {
        @Override
        public double survival(double age) {
            return Math.max(0, 1 - age / longestLife);
        }

        @Override
        public double hazard(double age) {
            return 1 / (longestLife - age);
        }

        @Override
        public double meanLife() {
            return longestLife / 2;
        }

        @Override
        public double meanLifeWithin(double age) {
            return age - age * age / (2 * longestLife);
        }
    }

    /**
     * Jardine and Tsang, Maintenance, Replacement, and Reliability, chapter 2, problem 2: printed cost rates 0.0143,
     * 0.01, 0.0093, 0.01 at 10, 20, 30 and 40 thousand km. Exact optimum by hand: 40,000 (sqrt 3 - 1).
     */
    @Test
    void textbookUniformLife() {
        LifeModel life = new UniformLife(40_000);
        double[] printed = {0.0143, 0.01, 0.0093, 0.01};
        double[] exact = {0.1 / 7, 0.01, 0.14 / 15, 0.01};
        for (int i = 0; i < 4; i++) {
            double rate = AgeReplacement.costRate(life, 100, 200, 10_000 * (i + 1));
            assertThat(rate).isCloseTo(printed[i], within(5e-5));
            assertThat(rate).isCloseTo(exact[i], withinPercentage(1e-8));
        }
        AgeReplacementPolicy policy = AgeReplacement.best(life, 100, 200);
        assertThat(policy.age()).isCloseTo(40_000 * (Math.sqrt(3) - 1), withinPercentage(1e-8));
        assertThat(policy.costRate()).isCloseTo(0.00933012701892219, withinPercentage(1e-8));
    }

    /** Barlow and Proschan (1965), chapter 4: no finite age unless the hazard rises and failures are dearer. */
    @Test
    void neverOnAge() {
        double[][] cases = {
            {1, 1000, 1, 5, 0.005}, {0.8, 1000, 1, 5, 0.00441305060528335}, {2.5, 1000, 5, 5, 0.00563530248993014}
        };
        for (double[] c : cases) {
            AgeReplacementPolicy policy = AgeReplacement.best(new WeibullLife(c[0], c[1]), c[2], c[3]);
            assertThat(policy.age()).isNull();
            assertThat(policy.costRate()).isCloseTo(c[4], withinPercentage(1e-8));
            assertThat(policy.costRateRunToFailure()).isCloseTo(c[4], withinPercentage(1e-8));
        }
    }

    /** Made-up injector set, formula as above; digits computed with R 4.2.2. */
    @Test
    void injectorSetInKilometres() {
        WeibullLife life = new WeibullLife(2.6, 310_000);
        AgeReplacementPolicy policy = AgeReplacement.best(life, 1450, 6200);
        assertThat(policy.age()).isCloseTo(165_610.950512852, withinPercentage(1e-6));
        assertThat(policy.costRate()).isCloseTo(0.0146106330435087, withinPercentage(1e-6));
        assertThat(policy.costRateRunToFailure()).isCloseTo(0.0225171864885985, withinPercentage(1e-6));
        assertThat(AgeReplacement.costRate(life, 1450, 6200, 100_000))
                .isCloseTo(0.017190191448849, withinPercentage(1e-6));
        assertThat(AgeReplacement.costRate(life, 1450, 6200, 250_000))
                .isCloseTo(0.0162801449992487, withinPercentage(1e-6));
    }

    @Test
    void extremeCostsAndShapes() {
        // for tiny ages the optimum tends to scale x (ratio / (shape - 1))^(1 / shape), from the series of the formula
        AgeReplacementPolicy dear = AgeReplacement.best(new WeibullLife(2, 1e6), 1, 1e8);
        assertThat(dear.age()).isCloseTo(1e6 * Math.sqrt(1e-8), withinPercentage(0.1));
        assertThat(AgeReplacement.best(new WeibullLife(1.02, 5_000), 1, 1.01).age())
                .isNull();
        assertThat(AgeReplacement.best(new WeibullLife(15, 5_000), 1, 20).age()).isBetween(2_000.0, 5_000.0);
        assertThatThrownBy(() -> AgeReplacement.best(new WeibullLife(2, 1), 0, 5))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("planned cost");
    }
}
