package dev.injectorplanner.core.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Exact and approximate distributions agree within the stated bound, tried on seeded random chances. */
class C02_ApproximationsTest {
    private static double[] chances(Random random, int pieces, double most) {
        double[] chances = new double[pieces];
        for (int i = 0; i < pieces; i++) {
            chances[i] = most * random.nextDouble();
        }
        return chances;
    }

    private static double largestGap(Demand one, Demand other, int pieces) {
        double gap = 0;
        for (int k = 0; k <= pieces; k++) {
            gap = Math.max(gap, Math.abs(one.chanceOfAtMost(k) - other.chanceOfAtMost(k)));
        }
        return gap;
    }

    @Test
    void poissonLiesWithinItsBound() {
        for (long seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            double[] chances = chances(random, 1 + random.nextInt(400), 0.2 * random.nextDouble());
            double squares = Arrays.stream(chances).map(p -> p * p).sum();
            Demand exact = Demand.exact(chances);
            double gap = largestGap(exact, Demand.poisson(exact.mean()), chances.length);
            assertThat(gap).as("seed %d", seed).isLessThanOrEqualTo(Demand.poissonBound(chances));
            // Le Cam 1960: the chances of all counts together differ by less than twice the sum of squares
            assertThat(Demand.poissonBound(chances)).as("seed %d", seed).isLessThanOrEqualTo(squares + 1e-15);
        }
    }

    @Test
    void normalWithSkewnessLiesWithinItsBound() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            double[] chances = chances(random, 1_000 + random.nextInt(2_000), 0.3 + 0.7 * random.nextDouble());
            Demand approximate = Demand.approximate(chances);
            assertThat(approximate.method()).as("seed %d", seed).isEqualTo("normal with skewness");
            double gap = largestGap(Demand.exact(chances), approximate, chances.length);
            assertThat(gap).as("seed %d", seed).isLessThanOrEqualTo(approximate.errorBound());
            assertThat(approximate.errorBound()).as("seed %d", seed).isLessThan(0.002);
        }
    }

    @Test
    void theBetterOfTheTwoIsTaken() {
        double[] rare = new double[3_000];
        Arrays.fill(rare, 0.0005);
        assertThat(Demand.approximate(rare).method()).isEqualTo("Poisson");
        double[] common = new double[3_000];
        Arrays.fill(common, 0.2);
        assertThat(Demand.approximate(common).method()).isEqualTo("normal with skewness");
    }

    /** 60,000 injectors at 0.004 each take few steps, since few fail; 60,000 at a half take too many. */
    @Test
    void exactAsLongAsTheWorkAllows() {
        double[] rare = new double[60_000];
        Arrays.fill(rare, 0.004);
        Demand exact = Demand.ofChances(rare);
        assertThat(exact.errorBound()).isZero();
        assertThat(exact.mean()).isCloseTo(240, within(1e-6));
        double[] common = new double[60_000];
        Arrays.fill(common, 0.5);
        Demand approximate = Demand.ofChances(common);
        assertThat(approximate.errorBound()).isGreaterThan(0);
        // mean 30,000, standard deviation 122.47: the 95 % point of a normal is 1.645 of those further
        assertThat(approximate.smallestStock(0.95)).isBetween(30_200, 30_203);
    }

    @Test
    void aHigherLevelNeverNeedsLessAndAnotherInjectorNeverDoes() {
        for (long seed = 1; seed <= 30; seed++) {
            Random random = new Random(seed);
            double[] chances = chances(random, 2 + random.nextInt(60), 0.5);
            Demand demand = Demand.ofChances(chances);
            Demand oneLess = Demand.ofChances(Arrays.copyOf(chances, chances.length - 1));
            int before = 0;
            for (double level = 0.05; level < 1; level += 0.05) {
                int stock = demand.smallestStock(level);
                assertThat(stock).as("seed %d", seed).isGreaterThanOrEqualTo(before);
                assertThat(stock).as("seed %d", seed).isGreaterThanOrEqualTo(oneLess.smallestStock(level));
                assertThat(demand.chanceOfAtMost(stock)).isGreaterThanOrEqualTo(level);
                assertThat(demand.chanceOfAtMost(stock - 1)).isLessThan(level);
                before = stock;
            }
        }
    }

    /** Half of the time as one, half as the other: the cumulated chances are the means. */
    @Test
    void leadTimesThatVaryMixTheirDemands() {
        Demand quick = Demand.poisson(1);
        Demand slow = Demand.poisson(4);
        Demand either = Demand.anyOf(java.util.List.of(quick, slow));
        assertThat(either.mean()).isCloseTo(2.5, within(1e-12));
        assertThat(either.chanceOfAtMost(3))
                .isCloseTo((quick.chanceOfAtMost(3) + slow.chanceOfAtMost(3)) / 2, within(1e-15));
        assertThat(either.smallestStock(0.95)).isBetween(quick.smallestStock(0.95), slow.smallestStock(0.95));
    }
}
