package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** By a clock of the test's own, which stands still but for the tries. */
class LockWaitTest {
    private long nanos = 17;

    @Test
    void three_tries_of_ten_seconds_are_all() {
        assertThat(secondsUntilGivenUp(10)).isEqualTo(30);
    }

    @Test
    void tries_that_fail_at_once_go_on_for_half_a_minute() {
        assertThat(secondsUntilGivenUp(1)).isBetween(29L, 31L);
    }

    @Test
    void a_first_try_that_lasted_too_long_still_has_a_second() {
        assertThat(secondsUntilGivenUp(40)).isEqualTo(80);
    }

    @Test
    void what_is_left_never_is_below_nothing() {
        LockWait wait = LockWait.begin(() -> nanos);
        pass(10);
        assertThat(wait.secondsLeft()).isEqualTo(20);
        pass(25);
        assertThat(wait.secondsLeft()).isZero();
    }

    private long secondsUntilGivenUp(long secondsOfATry) {
        LockWait wait = LockWait.begin(() -> nanos);
        long seconds = secondsOfATry;
        pass(secondsOfATry);
        while (wait.hasTimeForAnother()) {
            pass(secondsOfATry);
            seconds += secondsOfATry;
        }
        return seconds;
    }

    private void pass(long seconds) {
        nanos += TimeUnit.SECONDS.toNanos(seconds);
    }
}
