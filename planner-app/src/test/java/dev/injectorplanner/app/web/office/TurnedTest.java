package dev.injectorplanner.app.web.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists that are turned by the page's address. */
class TurnedTest {
    private static final List<Integer> SIXTY = IntStream.range(0, 60).boxed().toList();

    private static Turned asked(String... pairs) {
        Map<String, String[]> asked = new LinkedHashMap<>();
        for (int at = 0; at < pairs.length; at += 2) {
            asked.put(pairs[at], new String[] {pairs[at + 1]});
        }
        return Turned.of("/plan", asked);
    }

    @Test
    void the_first_rows_with_a_link_to_the_next_that_keeps_what_was_asked() {
        ListPage<Integer> page = asked("depot", "Old Town & Sons", "week", "2026-W12", "said", "shipped")
                .page("B", "sec-b", SIXTY);
        assertThat(page.rows()).isEqualTo(SIXTY.subList(0, 25));
        assertThat(page.words()).isEqualTo("1 to 25 of 60");
        assertThat(page.before()).isEmpty();
        assertThat(page.next()).isEqualTo("/plan?depot=Old%20Town%20%26%20Sons&week=2026-W12&list=B&from=25#sec-b");
    }

    @ParameterizedTest
    @CsvSource({"25, 25", "26, 25", "59, 50", "60, 50", "9999, 50", "-7, 0", "x, 0", "99999999999, 0"})
    void any_row_that_was_asked_for_is_found_on_its_page(String from, int first) {
        Turned turned = asked("list", "B", "from", from);
        assertThat(turned.page("B", "sec-b", SIXTY).from()).isEqualTo(first);
        assertThat(turned.page("C", "sec-c", SIXTY).from()).as("another list").isZero();
    }

    @Test
    void the_last_rows_lead_back_alone() {
        ListPage<Integer> page = asked("list", "B", "from", "50").page("B", "sec-b", SIXTY);
        assertThat(page.rows()).isEqualTo(SIXTY.subList(50, 60));
        assertThat(page.words()).isEqualTo("51 to 60 of 60");
        assertThat(page.before()).isEqualTo("/plan?list=B&from=25#sec-b");
        assertThat(page.next()).isEmpty();
    }

    @Test
    void a_row_that_has_to_be_seen_is_shown_unless_the_list_was_turned() {
        assertThat(asked().pageWith("B", "sec-b", SIXTY, 30).from()).isEqualTo(25);
        assertThat(asked().pageWith("B", "sec-b", SIXTY, -1).from()).isZero();
        assertThat(asked("list", "B", "from", "50")
                        .pageWith("B", "sec-b", SIXTY, 30)
                        .from())
                .isEqualTo(50);
    }

    @Test
    void an_empty_list_has_an_empty_page() {
        ListPage<Integer> page = asked("list", "B", "from", "50").page("B", "sec-b", List.of());
        assertThat(page.rows()).isEmpty();
        assertThat(page.hasMore()).isFalse();
    }

    @Test
    void the_lines_of_a_form_are_parts_that_hold_every_line_once() {
        List<ListPage<Integer>> parts = asked().parts(SIXTY);
        assertThat(parts)
                .extracting(ListPage::words)
                .containsExactly("1 to 25 of 60", "26 to 50 of 60", "51 to 60 of 60");
        assertThat(parts.stream().flatMap(part -> part.rows().stream()).toList())
                .isEqualTo(SIXTY);
        assertThat(parts.get(0).isFirst()).isTrue();
        assertThat(parts.get(1).isFirst()).isFalse();
    }
}
