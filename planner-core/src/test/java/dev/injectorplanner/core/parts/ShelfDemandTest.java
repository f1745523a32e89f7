package dev.injectorplanner.core.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ShelfDemandTest {
    /** 5,000 pieces at 0.3: mean 1,500, standard deviation 32.4; the 95 % point of a normal is 1.645 of those further. */
    @Test
    void manyPiecesAreApproximatedAndAgreeWithTheExact() {
        StockDemand demand = new StockDemand();
        demand.add(5_000, 1, 0.3);
        double[] chances = new double[5_000];
        Arrays.fill(chances, 0.3);
        assertThat(demand.required(0.95)).isEqualTo(Demand.exact(chances).smallestStock(0.95));
        assertThat(demand.required(0.95)).isBetween(1_552.0, 1_555.0);
        assertThat(demand.expected()).isEqualTo(1_500);
        assertThat(demand.chanceAbove(1_500, 0.95)).isCloseTo(0.5, within(0.02));
    }

    @Test
    void whatIsCertainIsShortForCertain() {
        StockDemand demand = new StockDemand();
        demand.add(2, 2, 1);
        demand.add(1, 1, 0.25);
        assertThat(demand.chanceAbove(3, 0.95)).isEqualTo(1);
        assertThat(demand.chanceAbove(4, 0.95)).isCloseTo(0.25, within(1e-12));
        assertThat(demand.chanceAbove(5, 0.95)).isZero();
        assertThat(demand.required(0.7)).isEqualTo(4);
        assertThat(demand.required(0.95)).isEqualTo(5);
    }

    @Test
    void aChanceOfNothingNeedsNothing() {
        StockDemand demand = new StockDemand();
        demand.add(3, 1, 0);
        assertThat(demand.required(0.999)).isZero();
        assertThat(demand.expected()).isZero();
    }
}
