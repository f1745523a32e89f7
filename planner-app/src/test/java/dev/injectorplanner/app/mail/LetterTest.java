package dev.injectorplanner.app.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LetterTest {
    private static final Letter LETTER = new Letter("Title <b>")
            .say("First \"this\" & that's all.")
            .tableOf(
                    "Table",
                    List.of("Truck", "Why"),
                    List.of(List.of("T1", "<script>alert(1)</script>"), List.of("T-200", "x")))
            .tableOf("Nothing in it", List.of("Truck"), List.of());

    @Test
    void the_text_is_in_columns() {
        assertThat(LETTER.text()).isEqualTo("""
                        Title <b>

                        First "this" & that's all.

                        Table
                          Truck  Why
                          T1     <script>alert(1)</script>
                          T-200  x

                        """);
    }

    @Test
    void the_html_says_the_same_and_runs_nothing() {
        assertThat(LETTER.html())
                .contains("<h1>Title &lt;b&gt;</h1>", "<p>First &quot;this&quot; &amp; that&#39;s all.</p>")
                .contains("<td>&lt;script&gt;alert(1)&lt;/script&gt;</td>")
                .doesNotContain("<script", "http", "Nothing in it", "color");
    }
}
