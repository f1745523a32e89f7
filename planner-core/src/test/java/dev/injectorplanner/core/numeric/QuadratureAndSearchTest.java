package dev.injectorplanner.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class QuadratureAndSearchTest {

    @Test
    void integralsKnownInClosedForm() {
        assertThat(AdaptiveQuadrature.integrate(Math::exp, 0, 1, 1e-13)).isCloseTo(Math.E - 1, within(1e-14));
        assertThat(AdaptiveQuadrature.integrate(Math::exp, 1, 0, 1e-13)).isCloseTo(1 - Math.E, within(1e-14));
        assertThat(AdaptiveQuadrature.integrate(Math::exp, 2, 2, 1e-13)).isEqualTo(0);
        // a narrow peak: area of 1 / (1 + (1000 x)^2) is 2 atan(1000) / 1000
        assertThat(AdaptiveQuadrature.integrate(x -> 1 / (1 + 1e6 * x * x), -1, 1, 1e-12))
                .isCloseTo(2 * Math.atan(1000) / 1000, withinPercentage(1e-9));
        // an end where the function is infinite: 2 sqrt(1)
        assertThat(AdaptiveQuadrature.integrate(x -> 1 / Math.sqrt(x), 0, 1, 1e-9))
                .isCloseTo(2, within(1e-6));
        // a corner
        assertThat(AdaptiveQuadrature.integrate(x -> Math.abs(x - 0.3), 0, 1, 1e-12))
                .isCloseTo(0.045 + 0.245, within(1e-12));
    }

    /** Every value is another one: no number of panels is enough, and the engine must not spin. */
    @Test
    void an_integral_without_end_stops_and_says_so() {
        assertThatThrownBy(() -> AdaptiveQuadrature.integrate(
                        x -> Double.doubleToLongBits(x) * 0x9E3779B97F4A7C15L / 1e19, 0, 1, 1e-12))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("stopped after 20000 panels");
    }

    @Test
    void rootsAndLeastPoints() {
        assertThat(Search.root(x -> x * x - 2, 0, 2)).isCloseTo(Math.sqrt(2), within(1e-15));
        assertThat(Search.root(x -> Math.pow(x, 9) - 1e-6, 0, 10)).isCloseTo(Math.pow(1e-6, 1 / 9.0), within(1e-12));
        assertThat(Search.leastByRatio(x -> Math.pow(Math.log(x / 37), 2), 0.01, 1e5, 50))
                .isCloseTo(37, withinPercentage(1e-5));
        assertThat(Search.root(x -> 1 - x, 3, 0))
                .as("bounds the other way round")
                .isCloseTo(1, within(1e-15));
        assertThatThrownBy(() -> Search.root(x -> x * x + 1, 0, 2)).hasMessageContaining("no change of sign");
        assertThatThrownBy(() -> AdaptiveQuadrature.integrate(Math::exp, 0, Double.NaN, 1e-9))
                .hasMessageContaining("finite");
    }
}
