package dev.injectorplanner.core.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.testkit.Published;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sources beside the tables: published/poisson_stocks.md, unequal_chances.md, base_stock.md. */
class C01_PublishedStocksTest {
    private static final double[] LEVELS = {0.5, 0.8, 0.9, 0.95, 0.975, 0.99, 0.995, 0.999};

    private static double number(String text) {
        return Double.parseDouble(text);
    }

    @Test
    void smallestStocksOfPoissonDemand() {
        List<String[]> rows = Published.rows("poisson_stocks.csv");
        assertThat(rows).hasSizeGreaterThan(15);
        for (String[] row : rows) {
            Demand demand = Demand.poisson(number(row[0]));
            for (int i = 0; i < LEVELS.length; i++) {
                assertThat(demand.smallestStock(LEVELS[i]))
                        .as("mean %s, level %s", row[0], LEVELS[i])
                        .isEqualTo(Integer.parseInt(row[i + 1]));
            }
        }
    }

    @Test
    void chancesOfPoissonDemand() {
        for (String[] row : Published.rows("poisson_chances.csv")) {
            assertThat(Demand.poisson(number(row[0])).chanceOfAtMost(Integer.parseInt(row[1])))
                    .as("mean %s, %s pieces", row[0], row[1])
                    .isCloseTo(number(row[2]), within(1e-12));
        }
    }

    private static double[] chancesOf(String name) {
        return Published.rows("unequal_chances.csv").stream()
                .filter(row -> row[0].equals(name) && !row[1].isEmpty())
                .mapToDouble(row -> number(row[1]))
                .toArray();
    }

    @Test
    void unequalChancesExactly() {
        for (String[] row : Published.rows("unequal_chances.csv")) {
            Demand demand = Demand.ofChances(chancesOf(row[0]));
            int pieces = Integer.parseInt(row[2]);
            assertThat(demand.errorBound()).isZero();
            assertThat(demand.chanceOf(pieces)).as(row[0] + " " + pieces).isCloseTo(number(row[3]), within(1e-14));
            assertThat(demand.chanceOfAtMost(pieces))
                    .as(row[0] + " " + pieces)
                    .isCloseTo(number(row[4]), within(1e-14));
        }
        assertThat(Demand.ofChances(chancesOf("four")).mean()).isCloseTo(1, within(1e-14));
        assertThat(Demand.ofChances(chancesOf("twenty-four")).mean()).isCloseTo(3, within(1e-14));
    }

    @Test
    void smallestStocksOfUnequalChancesAndOfPoissonInTheirPlace() {
        for (String[] row : Published.rows("unequal_chances_stocks.csv")) {
            Demand demand = Demand.ofChances(chancesOf(row[0]));
            double level = number(row[1]);
            assertThat(demand.smallestStock(level)).as(row[0] + " " + level).isEqualTo(Integer.parseInt(row[2]));
            if (!row[3].isEmpty()) {
                assertThat(Demand.poisson(demand.mean()).smallestStock(level)).isEqualTo(Integer.parseInt(row[3]));
            }
        }
    }

    @Test
    void newsvendor() {
        for (String[] row : Published.rows("newsvendor.csv")) {
            Demand demand = Demand.poisson(number(row[0]));
            double ratio = number(row[1]) / (number(row[1]) + number(row[2]));
            int stock = demand.smallestStock(ratio);
            assertThat(stock).isEqualTo(Integer.parseInt(row[3]));
            assertThat(demand.chanceOfAtMost(stock)).isCloseTo(number(row[4]), within(1e-10));
            assertThat(demand.chanceOfAtMost(stock - 1)).isCloseTo(number(row[5]), within(1e-10));
            double shortage = demand.expectedShortage(stock);
            assertThat(shortage).isCloseTo(number(row[6]), within(1e-10));
            assertThat(stock - demand.mean() + shortage).isCloseTo(number(row[7]), within(1e-10));
        }
    }

    /** One-for-one base stock: fill rate P(D <= S - 1), so the stock is one more than covers the demand. */
    @Test
    void baseStock() {
        for (String[] row : Published.rows("base_stock.csv")) {
            Demand demand = Demand.poisson(number(row[0]));
            int stock = demand.smallestStock(number(row[1])) + 1;
            assertThat(stock).isEqualTo(Integer.parseInt(row[2]));
            assertThat(demand.chanceOfAtMost(stock - 1)).isCloseTo(number(row[3]), within(1e-10));
            assertThat(demand.chanceOfAtMost(stock - 2)).isCloseTo(number(row[4]), within(1e-10));
            assertThat(demand.expectedShortage(stock)).isCloseTo(number(row[5]), within(1e-10));
        }
    }

    @Test
    void aServiceLevelOfNothingOrOfCertaintyIsRefused() {
        Demand demand = Demand.poisson(2);
        for (double level : new double[] {0, 1, -0.1, Double.NaN}) {
            assertThatThrownBy(() -> demand.smallestStock(level)).isInstanceOf(InvalidValueException.class);
        }
        assertThatThrownBy(() -> Demand.exact(new double[] {0.2, Double.NaN}))
                .isInstanceOf(InvalidValueException.class);
    }

    @Test
    void noInjectorsNoDemand() {
        Demand none = Demand.ofChances(new double[0]);
        assertThat(none.smallestStock(0.999)).isZero();
        assertThat(none.mean()).isZero();
        assertThat(Demand.poisson(0).smallestStock(0.999)).isZero();
    }
}
