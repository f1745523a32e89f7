package dev.injectorplanner.app.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.app.forecast.Calibration.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Forecasts held against what happened. */
class CalibrationTest {
    /**
     * Newcombe, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17 (1998), table I, method 3:
     * 81 of 263, 95 %: 0.2553 to 0.3662 (values from memory).
     */
    @Test
    void the_interval_is_wilsons() {
        double z = 1.959963984540054;
        assertThat(Calibration.wilson(81, 263, -z)).isCloseTo(0.2553, within(5e-5));
        assertThat(Calibration.wilson(81, 263, z)).isCloseTo(0.3662, within(5e-5));
    }

    @Test
    void no_failure_among_ten_still_leaves_room_above() {
        assertThat(Calibration.wilson(0, 10, -1.645)).isZero();
        assertThat(Calibration.wilson(0, 10, 1.645)).isBetween(0.15, 0.25);
    }

    /** By hand: 0.19 over 84 days is a hazard that gives 1 - sqrt(0.81) = 0.1 over half of them. */
    @Test
    void one_that_came_out_early_counts_for_its_time() {
        assertThat(new Outcome(0.19, 42, false).expected()).isCloseTo(0.1, within(1e-12));
        assertThat(new Outcome(0.19, 84, true).expected()).isCloseTo(0.19, within(1e-12));
        assertThat(new Outcome(0.19, 0, false).expected()).isZero();
    }

    @Test
    void forecasts_that_are_true_hold_and_doubled_ones_do_not() {
        long seed = 20260302;
        Random luck = new Random(seed);
        List<Outcome> honest = new ArrayList<>();
        List<Outcome> doubled = new ArrayList<>();
        for (int at = 0; at < 20_000; at++) {
            double chance = 0.4 * luck.nextDouble() * luck.nextDouble();
            boolean failed = luck.nextDouble() < chance;
            honest.add(new Outcome(chance, 84, failed));
            doubled.add(new Outcome(Math.min(1, 2 * chance), 84, failed));
        }
        Calibration calibration = Calibration.of(honest);
        assertThat(calibration.count()).isEqualTo(20_000);
        assertThat(calibration.expected()).as("seed " + seed).isCloseTo(calibration.failures(), within(120.0));
        assertThat(Calibration.of(doubled).bands().stream()
                        .filter(band -> band.low() >= 0.1)
                        .allMatch(band -> band.forecast() > band.most()))
                .isTrue();
    }
}
