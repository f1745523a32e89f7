package dev.injectorplanner.app.web.office;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class DisplayFormatTest {
    @Test
    void days_and_weeks() {
        assertThat(DisplayFormat.day(LocalDate.of(2026, 9, 7))).isEqualTo("Mon\u00a07\u00a0Sep");
        assertThat(DisplayFormat.week(IsoWeek.parse("2026-W05"))).isEqualTo("W05");
        assertThat(DisplayFormat.days(LocalDate.of(2026, 3, 30), LocalDate.of(2026, 4, 3))
                        .replace('\u00a0', ' '))
                .isEqualTo("Monday 30 March to Friday 3 April 2026");
    }

    @Test
    void amounts_with_their_sign() {
        assertThat(DisplayFormat.more(411.6)).isEqualTo("+412");
        assertThat(DisplayFormat.more(-67)).isEqualTo("\u221267");
        assertThat(DisplayFormat.more(0.4)).isEqualTo("±0");
        assertThat(DisplayFormat.costs(-1340)).isEqualTo("saves 1,340");
    }

    @Test
    void chances_keep_a_digit_where_they_are_small() {
        assertThat(DisplayFormat.chance(0.29)).isEqualTo("29\u00a0%");
        assertThat(DisplayFormat.chance(0.012)).isEqualTo("1.2\u00a0%");
        assertThat(DisplayFormat.chance(0.0001)).isEqualTo("under\u00a00.1\u00a0%");
    }

    @Test
    void work_and_codes() {
        assertThat(DisplayFormat.work(List.of(1, 2), 6, true, List.of("fuel filters")))
                .isEqualTo("cylinders 1 2, injector test, fuel filters");
        assertThat(DisplayFormat.work(List.of(1, 2), 2, false, List.of())).isEqualTo("all 2");
        assertThat(DisplayFormat.code("7Q2M0F4K91XA")).isEqualTo("7Q2M\u00a00F4K\u00a091XA");
    }
}
