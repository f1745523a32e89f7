package dev.injectorplanner.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CodePatternTest {
    /**
     * Expressions on which backtracking engines take exponential time: the first from a report about this program, the others
     * the usual examples of "Runaway regular expressions" (OWASP, Regular expression Denial of Service).
     */
    @ParameterizedTest
    @ValueSource(strings = {"(.*A){25}x", "(a+)+", "([a-zA-Z]+)*", "(a|aa)+", "(a|a?)+", "(.*a){12}"})
    void no_pattern_makes_a_code_spin(String pattern) {
        String checked = CodePattern.checked(pattern);
        String code = "a".repeat(200) + "A".repeat(200) + "!";
        Boolean fits = Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> CodePattern.matches(checked, code), "a backtracking engine never ends");
        assertThat(fits).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "[0-9A-Z]{16}, ABCDE12345ABCDE1, true",
        "[0-9A-Z]{16}, ABCDE12345ABCDE, false",
        "'[A-Z]{2,4}\\d{3,}', ABC1234, true",
        "'[A-Z]{2,4}\\d{3,}', ABC12, false",
        "(?i)ab|cd, AB, true",
        "A[\\]x]B, A]B, true",
        "^AB$, AB, true",
        "^AB$, ABC, false",
    })
    void usual_patterns_mean_what_they_meant(String pattern, String code, boolean fits) {
        assertThat(CodePattern.matches(CodePattern.checked(pattern), code)).isEqualTo(fits);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "(?=A)B",
                "(A)\\1",
                "A++",
                "[A-Z",
                "[A-Z&&[^B]]",
                "[A[BC]]",
                "A{1001}",
                "((A{100}){100}){100}",
                "(((((((((((A{9}){9}){9}){9}){9}){9}){9}){9}){9}){9}){9})",
                "([A-Z]{500}B){20}",
                "(A{0,900}){9}"
            })
    void what_would_need_backtracking_or_memory_is_refused(String pattern) {
        assertThatThrownBy(() -> CodePattern.checked(pattern))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("code_pattern")
                .hasMessageContaining("[0-9A-Z]{16}");
    }

    @Test
    void a_long_expression_is_refused() {
        assertThatThrownBy(() -> CodePattern.checked("A".repeat(201)))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("has 201 characters, the maximum is 200");
    }

    @ParameterizedTest
    @CsvSource({
        "ABC, 3",
        "[A-Z]{16}, 16",
        "(AB){3}C, 7",
        "'(A{2,5}B){2}', 12",
        "'A{3,}', 4",
        "(((A{10}){10}){10}), 1000",
        "A\\{3}, 4"
    })
    void size_counts_what_is_repeated(String pattern, long size) {
        assertThat(PatternSize.of(pattern)).isEqualTo(size);
    }
}
