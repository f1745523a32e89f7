package dev.injectorplanner.app.mail;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
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

    @Test
    void in_a_sites_form() {
        SiteForm american = new SiteForm(
                new SiteUnits(SiteUnits.Distance.MILES, SiteUnits.Volume.US_GALLONS, SiteUnits.Temperature.FAHRENHEIT),
                "USD",
                SiteForm.DateForm.MONTH_FIRST,
                SiteForm.PaperSize.LETTER);
        Letter letter = new Letter("Week of 2026-03-02", american)
                .say("160,934 km since 2026-03-02.")
                .table(
                        "Orders",
                        List.of(
                                TableColumn.<Double>money("Price", 8, price -> price),
                                TableColumn.<Double>figure("Drained", Unit.LITRES, 8, litres -> litres)),
                        List.of(3.785411784));
        assertThat(letter.title()).isEqualTo("Week of 03/02/2026");
        assertThat(letter.text())
                .contains("100,000 mi since 03/02/2026.")
                .contains("Price, USD  Drained, US gal")
                .containsPattern("3.79 +1\\b");
    }
}
