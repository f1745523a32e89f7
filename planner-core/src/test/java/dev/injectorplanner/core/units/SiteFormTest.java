package dev.injectorplanner.core.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.units.SiteForm.DateForm;
import dev.injectorplanner.core.units.SiteForm.PaperSize;
import java.util.List;
import org.junit.jupiter.api.Test;

class SiteFormTest {
    private static final SiteUnits AMERICAN =
            new SiteUnits(SiteUnits.Distance.MILES, SiteUnits.Volume.US_GALLONS, SiteUnits.Temperature.FAHRENHEIT);

    private static SiteForm with(DateForm dates) {
        return new SiteForm(AMERICAN, "$", dates, PaperSize.LETTER);
    }

    /** 160,934.4 km are 100,000 miles exactly (international mile, 1959). */
    @Test
    void sentencesInUnitsAndDates() {
        String engine = "160,934 km since fitting on 2026-03-02 (order PO-2026-03-02)";
        assertThat(with(DateForm.MONTH_FIRST).sentence(engine))
                .isEqualTo("100,000 mi since fitting on 03/02/2026 (order PO-2026-03-02)");
        assertThat(with(DateForm.DAY_FIRST).sentence(engine)).contains("on 02/03/2026 (");
        assertThat(with(DateForm.ISO).sentence("since 2026-03-02")).isEqualTo("since 2026-03-02");
        assertThat(SiteForm.STANDARD.inTerminal().sentence(engine)).isEqualTo(engine);
        assertThat(with(DateForm.DAY_FIRST).inTerminal()).isEqualTo(with(DateForm.DAY_FIRST));
        assertThat(SiteForm.STANDARD.sentence(engine))
                .isEqualTo("160,934 km since fitting on 2 Mar 2026 (order PO-2026-03-02)");
        assertThat(with(DateForm.DAY_FIRST).sentence("serial 2026-13-45")).isEqualTo("serial 2026-13-45");
    }

    @Test
    void headingsOfMoneyBearTheCurrency() {
        assertThat(with(DateForm.ISO).money("Price")).isEqualTo("Price, $");
        assertThat(SiteForm.STANDARD.money("Price")).isEqualTo("Price");
    }

    @Test
    void aCurrencyIsShortAndNoFormula() {
        for (String wrong : List.of("dollars", "=1", "+", "5 EUR", "a\nb")) {
            assertThatThrownBy(() -> new SiteForm(AMERICAN, wrong, DateForm.ISO, PaperSize.A4))
                    .as(wrong)
                    .isInstanceOf(InvalidValueException.class);
        }
    }
}
