package dev.injectorplanner.app.jobs.quartz;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.jobs.time.LocalTimes;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Date;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.quartz.CronExpression;

/**
 * Why jobs are not fired by Quartz's own cron triggers: on the night that skips an hour they leave out the whole night, and
 * "every quarter of an hour" pauses for an hour when the clock goes back. Should Quartz fix that, this test says so.
 */
class QuartzCronTriggerTest {
    private static Instant quartz(String line, String zone, String after) throws Exception {
        CronExpression cron = new CronExpression(line);
        cron.setTimeZone(TimeZone.getTimeZone(ZoneId.of(zone)));
        return cron.getNextValidTimeAfter(Date.from(Instant.parse(after))).toInstant();
    }

    private static Instant ours(String line, String zone, String after) {
        return LocalTimes.of(line, ZoneId.of(zone)).nextAfter(Instant.parse(after));
    }

    @Test
    void a_nightly_time_that_the_clock_skips_is_left_out_by_quartz_and_caught_by_us() throws Exception {
        assertThat(quartz("0 30 2 * * ?", "America/Chicago", "2026-03-07T08:30:00Z"))
                .isEqualTo("2026-03-09T07:30:00Z"); // no run on the 8th
        assertThat(ours("30 2 * * *", "America/Chicago", "2026-03-07T08:30:00Z"))
                .isEqualTo("2026-03-08T08:00:00Z");
        assertThat(quartz("0 30 2 * * ?", "Europe/Berlin", "2026-03-28T01:30:00Z"))
                .isEqualTo("2026-03-30T00:30:00Z"); // no run on the 29th
        assertThat(ours("30 2 * * *", "Europe/Berlin", "2026-03-28T01:30:00Z")).isEqualTo("2026-03-29T01:00:00Z");
    }

    @Test
    void a_quarter_of_an_hour_becomes_five_when_the_clock_goes_back_with_quartz_not_with_us() throws Exception {
        assertThat(quartz("0 0/15 * * * ?", "America/Chicago", "2026-11-01T05:45:00Z"))
                .isEqualTo("2026-11-01T07:00:00Z");
        assertThat(ours("*/15 * * * *", "America/Chicago", "2026-11-01T05:45:00Z"))
                .isEqualTo("2026-11-01T06:00:00Z");
    }
}
