package dev.injectorplanner.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.UnitReturn.State;
import dev.injectorplanner.core.fleet.UnitReturn.What;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class UnitReturnTest {
    private static final LocalDate SENT = LocalDate.of(2026, 2, 3);

    private static UnitReturn sent() {
        return new UnitReturn(
                What.CORE,
                "T1",
                3,
                SENT.minusDays(20),
                "RN-1",
                SENT,
                "Kim",
                new BigDecimal("120"),
                null,
                null,
                null,
                "");
    }

    @Test
    void it_is_sent_then_credited_or_refused() {
        assertThat(sent().state()).isEqualTo(State.SENT);
        assertThat(sent().settled(SENT.plusDays(9), "Lee", new BigDecimal("120"), "")
                        .state())
                .isEqualTo(State.CREDITED);
        assertThat(sent().settled(SENT.plusDays(9), "Lee", BigDecimal.ZERO, "tip melted")
                        .state())
                .isEqualTo(State.REFUSED);
    }

    @Test
    void an_answer_is_whole_later_and_says_why_nothing_was_credited() {
        assertThatThrownBy(() -> sent().settled(SENT.plusDays(9), "Lee", BigDecimal.ZERO, ""))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("nothing was credited");
        assertThatThrownBy(() -> sent().settled(SENT.minusDays(1), "Lee", BigDecimal.ONE, ""))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("is before sent_on");
        assertThatThrownBy(() -> new UnitReturn(
                        What.CLAIM, "T1", 3, SENT, "CL-1", SENT, "Kim", BigDecimal.TEN, SENT, null, null, ""))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("does not go with settled_by and credit");
    }

    @Test
    void it_is_of_one_unit() {
        LocalDate fitted = SENT.minusDays(20);
        assertThat(sent().isOf(What.CORE, "T1", 3, fitted, 1)).isTrue();
        assertThat(sent().isOf(What.CLAIM, "T1", 3, fitted, 1)).isFalse();
        assertThat(sent().isOf(What.CORE, "T2", 3, fitted, 1)).isFalse();
        assertThat(sent().isOf(What.CORE, "T1", 4, fitted, 1)).isFalse();
        assertThat(sent().isOf(What.CORE, "T1", 3, fitted, 2)).isFalse();
        assertThat(sent().isOf(What.CORE, "T1", 3, fitted.plusDays(1), 1)).isFalse();
    }
}
