package dev.injectorplanner.app.web.office;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SaidTest {
    @Test
    void days_and_weeks() {
        assertThat(Said.day(LocalDate.of(2026, 9, 7))).isEqualTo("Mon\u00a07\u00a0Sep");
        assertThat(Said.week(IsoWeek.parse("2026-W05"))).isEqualTo("W05");
        assertThat(Said.days(LocalDate.of(2026, 3, 30), LocalDate.of(2026, 4, 3))
                        .replace('\u00a0', ' '))
                .isEqualTo("Monday 30 March to Friday 3 April 2026");
    }

    @Test
    void amounts_with_their_sign() {
        assertThat(Said.more(411.6)).isEqualTo("+412");
        assertThat(Said.more(-67)).isEqualTo("\u221267");
        assertThat(Said.more(0.4)).isEqualTo("±0");
        assertThat(Said.costs(-1340)).isEqualTo("saves 1,340");
    }

    @Test
    void chances_keep_a_digit_where_they_are_small() {
        assertThat(Said.chance(0.29)).isEqualTo("29\u00a0%");
        assertThat(Said.chance(0.012)).isEqualTo("1.2\u00a0%");
        assertThat(Said.chance(0.0001)).isEqualTo("under\u00a00.1\u00a0%");
    }

    @Test
    void work_and_codes() {
        assertThat(Said.work(List.of(1, 2), 6, true, List.of("fuel filters")))
                .isEqualTo("cylinders 1 2, injector test, fuel filters");
        assertThat(Said.work(List.of(1, 2), 2, false, List.of())).isEqualTo("all 2");
        assertThat(Said.code("7Q2M0F4K91XA")).isEqualTo("7Q2M\u00a00F4K\u00a091XA");
    }
}
