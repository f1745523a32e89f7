package dev.injectorplanner.app.web.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Crontab lines as people say them, and back. Days of the week by crontab(5): 0 and 7 are Sunday. */
class TimesInWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "30 2 * * 1-5 | every weekday at 02:30",
                "0 5 * * * | every day at 05:00",
                "15 6 * * 1 | every Monday at 06:15",
                "15 6 * * 0 | every Sunday at 06:15",
                "15 6 * * 7 | every Sunday at 06:15",
                "0 4 1 * * | on day 1 of each month at 04:00",
                "0 * * * * | every hour",
                "20 * * * * | every hour, 20 minutes past",
                "*/15 * * * * | every 15 minutes",
                "0 4 1-7 * 1 | 0 4 1-7 * 1"
            })
    void a_line_in_words(String line, String words) {
        assertThat(TimesInWords.of(line)).isEqualTo(words);
    }

    @Test
    void a_form_becomes_the_line_that_says_the_same() {
        assertThat(TimesInWords.line("1-5", "02:30")).isEqualTo("30 2 * * 1-5");
        assertThat(TimesInWords.of(TimesInWords.line("3", "14:05"))).isEqualTo("every Wednesday at 14:05");
        assertThat(TimesInWords.of(TimesInWords.line("hour", "00:20"))).isEqualTo("every hour, 20 minutes past");
        assertThatThrownBy(() -> TimesInWords.line("1-5", "half past two"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("02:30");
    }
}
