package dev.injectorplanner.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whose a log is, by the pattern of its file's name. */
class LogSourceTest {
    @ParameterizedTest
    @CsvSource({
        "t005*, t005_2026-03-02.log, true",
        "t005*, t006_2026-03-02.log, false",
        "*.log, t005.log, true",
        "*.log, t005.txt, false",
        "a*b*c, a1b2b3c, true",
        "a*b*c, a1b2b3d, false",
        "a*b, ab, true",
        "abc, abc, true",
        "abc, abcd, false",
        "abc*, abc, true",
        "abcd, abc, false",
        "**, anything, true"
    })
    void aStarStandsForAnything(String pattern, String name, boolean fits) {
        assertThat(LogSource.matches(pattern, name)).isEqualTo(fits);
        assertThat(new LogSource(pattern.toUpperCase(java.util.Locale.ROOT), null, "T1", null).isOf(name))
                .isEqualTo(fits);
    }

    @Test
    void whatSaysNothingIsRefused() {
        assertThatThrownBy(() -> new LogSource("a.log", 0, null, null))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("enter at least one of them");
        assertThatThrownBy(() -> new LogSource("", 0, "T1", null)).hasMessageContaining("1 to 120 characters");
        assertThatThrownBy(() -> new LogSource("x".repeat(121), 0, "T1", null))
                .hasMessageContaining("1 to 120 characters");
        assertThatThrownBy(() -> new LogSource("a", 254, "T1", null)).hasMessageContaining("source_address");
        assertThatThrownBy(() -> new LogSource("a", 3, null, 5)).hasMessageContaining("spn_layout");
        assertThat(new LogSource("a", 253, null, 1).truck()).isNull();
    }
}
