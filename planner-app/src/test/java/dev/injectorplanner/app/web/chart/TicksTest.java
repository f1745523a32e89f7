package dev.injectorplanner.app.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Axes are divided at round figures: 1, 2, 2.5 or 5 times a power of ten, the usual practice of hand-drawn charts. */
class TicksTest {
    @ParameterizedTest
    @CsvSource({
        "485735, 4, false, 200000",
        "7, 4, false, 2",
        "0.9, 4, false, 0.25",
        "10, 4, false, 2.5",
        "10, 4, true, 5",
        "2, 4, true, 1",
        "0, 4, false, 0.25",
        "1000, 5, true, 200"
    })
    void theSmallestRoundStepOfWhichSoManyReachTheSpan(double span, int most, boolean whole, double step) {
        assertThat(Ticks.step(span, most, whole)).isCloseTo(step, within(1e-12));
    }

    @Test
    void anySpanIsReachedByNoMoreThanTheStepsAskedForAndStepsAreRound() {
        Random luck = new Random(7);
        for (int round = 0; round < 2_000; round++) {
            double span = Math.pow(10, luck.nextDouble() * 12 - 4);
            int most = 2 + luck.nextInt(8);
            double step = Ticks.step(span, most, false);
            assertThat(step * most).as("span %s, steps %s", span, most).isGreaterThanOrEqualTo(span * (1 - 1e-9));
            double mantissa = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
            assertThat(List.of(1.0, 2.0, 2.5, 5.0))
                    .as("step %s", step)
                    .anyMatch(each -> Math.abs(each - mantissa) < 1e-6);
        }
    }

    @Test
    void anAxisBeginsAndEndsAtAFigureThatIsWrittenAndHoldsItsValues() {
        Axis axis = Axis.even(-3, 41, 5, true, value -> String.valueOf((long) value));
        assertThat(axis.ticks()).extracting(Axis.Tick::words).containsExactly("-10", "0", "10", "20", "30", "40", "50");
        assertThat(axis.at(-10)).isZero();
        assertThat(axis.at(50)).isEqualTo(1);
        assertThat(axis.at(20)).isEqualTo(0.5);
    }

    @Test
    void aTimeIsDividedAtFirstDaysOfMonthsQuartersOrYears() {
        LocalDate from = LocalDate.of(2024, 3, 15);
        assertThat(Ticks.months(from, LocalDate.of(2024, 8, 2), 6))
                .containsExactly(
                        LocalDate.of(2024, 4, 1),
                        LocalDate.of(2024, 5, 1),
                        LocalDate.of(2024, 6, 1),
                        LocalDate.of(2024, 7, 1),
                        LocalDate.of(2024, 8, 1));
        assertThat(Ticks.months(from, LocalDate.of(2026, 3, 2), 5))
                .containsExactly(
                        LocalDate.of(2024, 7, 1),
                        LocalDate.of(2025, 1, 1),
                        LocalDate.of(2025, 7, 1),
                        LocalDate.of(2026, 1, 1));
    }

    /** Square roots spread small chances: 25 % lies in the middle, 1 % a tenth from the left. */
    @Test
    void chancesLieAtTheirSquareRoots() {
        assertThat(Axis.chances().at(0.25)).isCloseTo(0.5, within(1e-12));
        assertThat(Axis.chances().at(0.01)).isCloseTo(0.1, within(1e-12));
    }
}
