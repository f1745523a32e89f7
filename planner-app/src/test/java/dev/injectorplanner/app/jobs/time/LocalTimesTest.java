package dev.injectorplanner.app.jobs.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LocalTimesTest {
    private static final ZoneId RIGA = ZoneId.of("Europe/Riga");

    /** By hand, from the calendar: 2028 is a leap year, 2100 is none. */
    @ParameterizedTest
    @CsvSource({
        "0 3 31 * *, 2026-01-31T03:00, 2026-03-31T03:00",
        "0 3 30 * *, 2026-01-30T03:00, 2026-03-30T03:00",
        "0 3 29 * *, 2026-01-29T03:00, 2026-03-29T04:00", // the night the clock jumps from 03:00 to 04:00
        "0 3 29 * *, 2028-01-29T03:00, 2028-02-29T03:00",
        "0 3 * * *, 2028-02-28T03:00, 2028-02-29T03:00",
        "0 3 * * *, 2028-02-29T03:00, 2028-03-01T03:00",
        "0 3 * * *, 2026-12-31T03:00, 2027-01-01T03:00",
        "0 3 29 2 *, 2096-02-29T03:00, 2104-02-29T03:00",
        "0 6 * * mon-fri, 2026-03-06T06:00, 2026-03-09T06:00",
        "0 6 * * 7, 2026-03-02T06:00, 2026-03-08T06:00",
        "'0 6 1 jan,jul *', 2026-03-02T06:00, 2026-07-01T06:00",
    })
    void month_ends_leap_days_and_names(String line, String after, String next) {
        LocalTimes times = LocalTimes.of(line, RIGA);
        Instant from = LocalDateTime.parse(after).atZone(RIGA).toInstant();
        Instant due = times.nextAfter(from);
        assertThat(LocalDateTime.ofInstant(due, RIGA)).isEqualTo(LocalDateTime.parse(next));
        assertThat(times.latestUntil(due)).isEqualTo(due);
        assertThat(times.latestUntil(due.minusMillis(1))).isBefore(due);
    }

    @Test
    void a_daily_time_is_due_as_often_as_there_are_days_in_fifty_years_of_any_zone() {
        for (String zone : new String[] {"America/Chicago", "Europe/Berlin", "Australia/Lord_Howe", "Asia/Kathmandu"}) {
            LocalTimes times = LocalTimes.of("15 2 * * *", ZoneId.of(zone));
            LocalDate first = LocalDate.of(2020, 1, 1);
            LocalDate end = LocalDate.of(2070, 1, 1);
            Instant due = first.atStartOfDay(ZoneId.of(zone)).toInstant();
            for (LocalDate day = first; day.isBefore(end); day = day.plusDays(1)) {
                due = times.nextAfter(due);
                assertThat(LocalDate.ofInstant(due, ZoneId.of(zone))).isEqualTo(day);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            nightly | does not have five fields
            30 24 * * * | is no hour from 0 to 23
            60 2 * * * | is no minute from 0 to 59
            0 2 30 2 * | names a day that never occurs
            0 2 * * mon-sun | ends before it begins
            0 2 * noon * | is no month from 1 to 12
            */0 2 * * * | is no minute from 1 to 59
            0,,5 2 * * * | is no minute
            """)
    void what_is_no_time_is_refused_with_a_way_to_mend_it(String line, String why) {
        assertThatThrownBy(() -> LocalTimes.of(line, RIGA))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining(why)
                .hasMessageContaining("Fix: ");
    }
}
