package dev.injectorplanner.app.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Addresses of RFC 5737, which are nobody's. */
class TrustedHopsTest {
    private static final String PROXY = "192.0.2.1";
    private static final String OUTER = "192.0.2.2";

    @Test
    void what_a_caller_wrote_before_the_proxys_own_word_counts_for_nothing() {
        assertThat(new TrustedHops(Set.of(PROXY)).caller(List.of("10.0.0.1, 198.51.100.9")))
                .isEqualTo("198.51.100.9");
        assertThat(new TrustedHops(Set.of()).caller(List.of("10.0.0.1, 198.51.100.9")))
                .isEqualTo("198.51.100.9");
        assertThat(new TrustedHops(Set.of()).caller(List.of("10.0.0.1", "198.51.100.9")))
                .isEqualTo("198.51.100.9");
    }

    @Test
    void proxies_in_a_row_are_passed_over() {
        TrustedHops hops = new TrustedHops(Set.of(PROXY, OUTER));
        assertThat(hops.caller(List.of("198.51.100.7, 198.51.100.9, 192.0.2.2, 192.0.2.1")))
                .isEqualTo("198.51.100.9");
    }

    @Test
    void a_caller_in_an_office_network_is_no_proxy() {
        assertThat(new TrustedHops(Set.of(PROXY)).caller(List.of("203.0.113.5, 10.1.2.3")))
                .isEqualTo("10.1.2.3");
    }

    @Test
    void no_header_names_nobody() {
        assertThat(new TrustedHops(Set.of(PROXY)).caller(List.of())).isEmpty();
    }
}
