package dev.injectorplanner.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class A11_WeibullLifeTest {
    /**
     * age, shape, scale; then density, failure, survival, hazard, cumulative hazard, median, B10, mean, standard
     * deviation. Definitions: NIST/SEMATECH e-Handbook 8.1.6.2, whose density 0.000123 and failure 0.08556 for the first
     * row are from memory; digits computed with R 4.2.2.
     */
    private static final double[][] VALUES = {
        {
            1000,
            1.5,
            5000,
            0.000122685086429664,
            0.085559356392783,
            0.914440643607217,
            0.000134164078649987,
            0.0894427190999916,
            3916.09884387326,
            1115.37762818459,
            4513.72646475467,
            3064.67895877338
        },
        {
            1,
            1,
            1,
            0.367879441171442,
            0.632120558828558,
            0.367879441171442,
            1,
            1,
            0.693147180559945,
            0.105360515657826,
            1,
            1
        },
        {
            26297,
            1.058446,
            26296.845,
            1.4807032094253e-05,
            0.632122853925296,
            0.367877146074704,
            4.02499373832974e-05,
            1.00000623873922,
            18600.2386676838,
            3137.24170265961,
            25715.6085476181,
            24306.5717892968
        },
        {
            10,
            0.7,
            1000,
            0.00267798700512588,
            0.0390286825807612,
            0.960971317419239,
            0.00278675019387448,
            0.0398107170553497,
            592.390112952134,
            40.162945282136,
            1265.82350605728,
            1851.17140039845
        },
        {
            1e-06,
            2,
            1,
            1.999999999998e-06,
            9.999999999995e-13,
            0.999999999999,
            2e-06,
            1e-12,
            0.832554611157698,
            0.324592845974501,
            0.886226925452758,
            0.463251375176104
        },
        {
            400000,
            2.5,
            310000,
            1.78349694206054e-06,
            0.849114812125333,
            0.150885187874667,
            1.1820225478607e-05,
            1.89123607657711,
            267726.819186736,
            126018.077206588,
            275051.783425953,
            117696.630475999
        },
    };

    @Test
    void functionsAgreeWithPublishedDefinitions() {
        for (double[] row : VALUES) {
            WeibullLife life = new WeibullLife(row[1], row[2]);
            double[] actual = {
                life.density(row[0]),
                life.failure(row[0]),
                life.survival(row[0]),
                life.hazard(row[0]),
                life.cumulativeHazard(row[0]),
                life.quantile(0.5),
                life.quantile(0.1),
                life.meanLife(),
                life.standardDeviation()
            };
            for (int i = 0; i < actual.length; i++) {
                assertThat(actual[i])
                        .as("value %d of age %s", i, row[0])
                        .isCloseTo(row[3 + i], withinPercentage(2e-10));
            }
        }
    }

    /** Definitions of Rausand and Hoyland (2004), chapter 2; digits from R 4.2.2. */
    @Test
    void residualLives() {
        DataTable table = DataTable.table("residual-life");
        for (int i = 0; i < table.size(); i++) {
            double age = table.column("age")[i];
            WeibullLife life = new WeibullLife(table.column("shape")[i], table.column("scale")[i]);
            double next = 0.1 * life.scale();
            assertThat(life.meanResidualLife(age))
                    .isCloseTo(table.column("mean_residual_life")[i], withinPercentage(1e-7));
            assertThat(life.conditionalFailure(age, next))
                    .isCloseTo(table.column("chance_in_next_tenth_of_scale")[i], within(1e-12));
            assertThat(life.remainingQuantile(age, 0.1))
                    .isCloseTo(table.column("conditional_b10")[i], withinPercentage(1e-7));
        }
    }

    /** Shape 2.5, scale 20,000 h, new, one hour: (1 / 20000)^2.5 = 1.7677669530e-11 by hand; 1 - exp(-H) loses it. */
    @Test
    void keepsTheDigitsOfTinyChances() {
        WeibullLife life = new WeibullLife(2.5, 20_000);
        assertThat(life.conditionalFailure(0, 1)).isCloseTo(1.767766952951e-11, withinPercentage(1e-9));
        // a tenth of a second at 10,000 h: hazard x time, 2.5 / 20000 x 0.5^1.5 x 1 / 36000
        assertThat(life.conditionalFailure(10_000, 1 / 36_000.0))
                .isCloseTo(2.5 / 20_000 * Math.pow(0.5, 1.5) / 36_000, withinPercentage(1e-6));
        assertThat(life.conditionalFailure(10_000, 0)).isEqualTo(0);
    }

    @Test
    void survivingTwoStepsIsSurvivingOneThenTheOther() {
        long seed = 31;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            WeibullLife life = new WeibullLife(random.nextDouble(0.3, 15), random.nextDouble(1, 1e7));
            double age = life.scale() * random.nextDouble(0, 1.2);
            double first = life.scale() * random.nextDouble(0, 0.2);
            double second = life.scale() * random.nextDouble(0, 0.2);
            double multiplier = random.nextDouble(0.2, 8);
            double both = 1 - life.conditionalFailure(age, first + second, multiplier);
            double chained = (1 - life.conditionalFailure(age, first, multiplier))
                    * (1 - life.conditionalFailure(age + first, second, multiplier));
            assertThat(both).as("seed %d, case %d", seed, i).isCloseTo(chained, within(1e-12));
            assertThat(life.withHazardTimes(multiplier).conditionalFailure(age, first))
                    .isCloseTo(life.conditionalFailure(age, first, multiplier), within(1e-12));
            assertThat(life.conditionalFailure(age, life.remainingQuantile(age, 0.25)))
                    .isCloseTo(0.25, within(1e-10));
        }
    }

    /** Mean residual life x survival is the rest of the mean: M(age) + S(age) x m(age) = mean, at every age. */
    @Test
    void meanLifeSplitsAtEveryAge() {
        for (double shape : new double[] {0.3, 0.8, 1, 1.7, 4, 15}) {
            WeibullLife life = new WeibullLife(shape, 5000);
            for (double hazard : new double[] {1e-6, 0.01, 0.3, 0.99, 1.01, 3, 12}) {
                double age = life.scale() * Math.pow(hazard, 1 / shape);
                double sum = life.meanLifeWithin(age) + life.survival(age) * life.meanResidualLife(age);
                assertThat(sum)
                        .as("shape %s, hazard %s", shape, hazard)
                        .isCloseTo(life.meanLife(), withinPercentage(1e-9));
            }
        }
        // constant hazard: the residual life never changes
        assertThat(new WeibullLife(1, 700).meanResidualLife(50_000)).isCloseTo(700, withinPercentage(1e-9));
    }

    @Test
    void refusesWhatIsNoLife() {
        assertThatThrownBy(() -> new WeibullLife(Double.NaN, 1)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> new WeibullLife(1, -1)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> new WeibullLife(1, 1).survival(-1)).isInstanceOf(InvalidValueException.class);
        assertThatThrownBy(() -> new WeibullLife(1, 1).conditionalFailure(1, Double.NaN))
                .isInstanceOf(InvalidValueException.class);
    }
}
