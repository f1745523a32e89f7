package dev.injectorplanner.core.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.testkit.Published;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Dates of ISO 8601: published/iso_week_dates.md. */
class IsoWeekTest {
    @Test
    void publishedDates() {
        for (String[] row : Published.rows("iso_week_dates.csv")) {
            LocalDate day = LocalDate.parse(row[0]);
            IsoWeek week = IsoWeek.of(day);
            assertThat(week).as(row[0]).isEqualTo(new IsoWeek(Integer.parseInt(row[1]), Integer.parseInt(row[2])));
            assertThat(week + "-" + day.getDayOfWeek().getValue()).isEqualTo(row[4]);
            assertThat(week.monday().plusDays(Integer.parseInt(row[3]) - 1L)).isEqualTo(day);
            assertThat(week.sunday()).isEqualTo(week.monday().plusDays(6));
        }
    }

    /** Years with 53 weeks between 2000 and 2040, computed with the Python standard library. */
    @Test
    void longYears() {
        List<Integer> longYears = IntStream.rangeClosed(2000, 2040)
                .filter(year -> IsoWeek.of(LocalDate.of(year, 12, 28)).week() == 53)
                .boxed()
                .toList();
        assertThat(longYears).containsExactly(2004, 2009, 2015, 2020, 2026, 2032, 2037);
    }

    @Test
    void bothWrittenFormsAndNoOthers() {
        assertThat(IsoWeek.parse("2026-W48")).isEqualTo(IsoWeek.parse("2026W48"));
        assertThatThrownBy(() -> IsoWeek.parse("W48 2026")).hasMessageContaining("write it as 2026-W48");
        assertThatThrownBy(() -> new IsoWeek(2025, 53)).hasMessageContaining("must be from 1 to 52");
    }

    @Test
    void weeksAddUpAcrossTheYear() {
        IsoWeek last = new IsoWeek(2026, 53);
        assertThat(last.plus(1)).isEqualTo(new IsoWeek(2027, 1));
        assertThat(last.weeksUntil(new IsoWeek(2027, 10))).isEqualTo(10);
        assertThat(last).isLessThan(last.plus(1));
    }
}
