package dev.injectorplanner.core.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class RequireTest {
    private static final double[] NO_NUMBERS = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};

    @Test
    void whatIsNoNumberPassesNoGuard() {
        for (double bad : NO_NUMBERS) {
            assertThatThrownBy(() -> Require.positive("x", bad)).isInstanceOf(InvalidValueException.class);
            assertThatThrownBy(() -> Require.notNegative("x", bad)).isInstanceOf(InvalidValueException.class);
            assertThatThrownBy(() -> Require.within("x", bad, 0, 1)).isInstanceOf(InvalidValueException.class);
            assertThatThrownBy(() -> Require.optionalPositive("x", bad)).isInstanceOf(InvalidValueException.class);
        }
        assertThat(Require.optionalPositive("x", null)).isNull();
    }

    @Test
    void bordersAreIncluded() {
        assertThat(Require.within("x", 0.0, 0, 1)).isZero();
        assertThat(Require.within("x", 1, 0, 1)).isEqualTo(1);
        assertThat(Require.notNegative("x", 0)).isZero();
        assertThatThrownBy(() -> Require.positive("x", 0))
                .hasMessage("x \"0\": must be above zero. Fix: enter a number above zero.");
    }

    @Test
    void theParts() {
        InvalidValueException refused =
                catchThrowableOfType(InvalidValueException.class, () -> Require.within("bays", 0, 1, 9));
        assertThat(refused.field()).isEqualTo("bays");
        assertThat(refused.value()).isEqualTo("0");
        assertThat(refused.reason()).isEqualTo("must be from 1 to 9");
        assertThat(refused.fix()).isEqualTo("enter a whole number from 1 to 9");
    }

    @Test
    void namesAreStrippedShortAndOnOneLine() {
        assertThat(Require.name("truck", "  T1 ")).isEqualTo("T1");
        assertThat(Require.optionalName("truck", "  ")).isNull();
        assertThatThrownBy(() -> Require.name("truck", null)).hasMessageContaining("is empty");
        assertThatThrownBy(() -> Require.name("truck", "x".repeat(61))).hasMessageContaining("has 61 characters");
        assertThatThrownBy(() -> Require.name("truck", "T\u00001")).hasMessageContaining("control character");
        assertThatThrownBy(() -> Require.text("reason", "two\nlines")).hasMessageContaining("write it on one line");
        assertThatThrownBy(() -> Require.text("reason", "x".repeat(2_001))).hasMessageContaining("2001 characters");
    }

    @Test
    void moneyIsKeptToCents() {
        assertThat(Require.money("price", new BigDecimal("5"))).isEqualTo(new BigDecimal("5.00"));
        assertThat(Require.money("price", new BigDecimal("5.1250"))).isEqualTo(new BigDecimal("5.125"));
        assertThat(Require.money("price", new BigDecimal("1E+3"))).isEqualTo(new BigDecimal("1000.00"));
        assertThatThrownBy(() -> Require.money("price", new BigDecimal("1E+20")))
                .hasMessageContaining("too large to be a real");
    }
}
