package dev.injectorplanner.app.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.jobs.time.LocalTimes;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** What a late firing is worth. Times by hand: Chicago is 6 h behind UTC in winter, 5 h in summer. */
class DueRunTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final LocalTimes NIGHTLY = LocalTimes.of(JobKind.NIGHTLY_PLAN.defaultTimes(), CHICAGO);

    private static DueRun nightly(String fired, String now) {
        return DueRun.of(JobKind.NIGHTLY_PLAN, NIGHTLY, Instant.parse(fired), Instant.parse(now));
    }

    @Test
    void on_time() {
        assertThat(nightly("2026-03-07T08:30:00Z", "2026-03-07T08:30:02Z"))
                .isEqualTo(new DueRun(Instant.parse("2026-03-07T08:30:00Z"), 0, false));
    }

    @Test
    void after_a_week_off_the_latest_night_is_caught_up_once_and_six_are_passed_over() {
        assertThat(nightly("2026-03-03T08:30:00Z", "2026-03-09T15:00:00Z"))
                .isEqualTo(new DueRun(Instant.parse("2026-03-09T07:30:00Z"), 6, false)); // summer time by then
    }

    @Test
    void over_the_skipped_night_hour_the_run_is_due_at_the_jump() {
        assertThat(nightly("2026-03-07T08:30:00Z", "2026-03-08T08:10:00Z"))
                .isEqualTo(new DueRun(Instant.parse("2026-03-08T08:00:00Z"), 1, false));
    }

    @Test
    void a_night_of_more_than_twenty_hours_ago_is_left_to_the_next() {
        Instant due = Instant.parse("2026-03-07T08:30:00Z");
        assertThat(nightly(due.toString(), due.plus(Duration.ofHours(20)).toString())
                        .tooLate())
                .isFalse();
        assertThat(nightly(
                                due.toString(),
                                due.plus(Duration.ofHours(20)).plusSeconds(1).toString())
                        .tooLate())
                .isTrue();
    }

    @Test
    void a_weekly_list_missed_on_friday_is_caught_up_on_monday_not_on_wednesday() {
        LocalTimes times = LocalTimes.of(JobKind.WORK_LIST.defaultTimes(), CHICAGO);
        Instant friday = Instant.parse("2026-03-06T18:00:00Z");
        assertThat(DueRun.of(JobKind.WORK_LIST, times, friday, Instant.parse("2026-03-09T12:00:00Z")))
                .isEqualTo(new DueRun(friday, 0, false));
        assertThat(DueRun.of(JobKind.WORK_LIST, times, friday, Instant.parse("2026-03-11T12:00:00Z"))
                        .tooLate())
                .isTrue();
    }

    @Test
    void a_sweep_after_downtime_stands_for_all_that_were_missed() {
        LocalTimes times = LocalTimes.of(JobKind.SWEEP.defaultTimes(), CHICAGO);
        DueRun due = DueRun.of(
                JobKind.SWEEP, times, Instant.parse("2026-03-01T00:00:00Z"), Instant.parse("2026-03-01T06:03:00Z"));
        assertThat(due).isEqualTo(new DueRun(Instant.parse("2026-03-01T06:00:00Z"), 24, false));
    }

    @Test
    void a_clock_that_is_a_moment_behind_runs_what_was_fired() {
        assertThat(nightly("2026-03-07T08:30:00Z", "2026-03-07T08:29:59Z").due())
                .isEqualTo(Instant.parse("2026-03-07T08:30:00Z"));
    }
}
