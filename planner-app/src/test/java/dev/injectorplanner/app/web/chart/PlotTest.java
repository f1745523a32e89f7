package dev.injectorplanner.app.web.chart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.web.chart.Chart.Frame;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A field of 100 by 100 with axes of 0 to 10: each place is worked out by hand. */
class PlotTest {
    private static final Frame FRAME = new Frame(120, 140, 10, 110, 20, 120);

    private static Plot plot() {
        Axis axis = Axis.even(0, 10, 5, true, value -> String.valueOf((long) value));
        return new Plot(FRAME, axis, axis);
    }

    @Test
    void aBarStandsOnZeroAndALineGoesThroughItsPoints() {
        Chart chart = plot().bar(Ink.BAR, 5, 2, 4)
                .line(Ink.LINE, List.of(new Plot.Spot(0, 0), new Plot.Spot(10, 10)))
                .steps(Ink.LINE, List.of(new Plot.Spot(0, 10), new Plot.Spot(5, 5)))
                .chart("Title", "about");
        assertThat(chart.marks())
                .extracting(Chart.Mark::path)
                .containsExactly("M50 120V80h20V120Z", "M10 120L110 20", "M10 20H60V70");
        assertThat(chart.lines()).extracting(Chart.Line::words).containsExactly("0", "2", "4", "6", "8", "10");
        assertThat(chart.lines().get(5).at()).isEqualTo(20);
        assertThat(chart.feet().get(5).at()).isEqualTo(110);
    }

    @Test
    void aValueBeyondTheAxisStaysInTheField() {
        assertThat(plot().line(Ink.LINE, List.of(new Plot.Spot(-5, 99), new Plot.Spot(99, -5)))
                        .chart("", "")
                        .marks()
                        .get(0)
                        .path())
                .isEqualTo("M10 20L110 120");
    }

    @Test
    void figuresThatFocusShowsAtOnceHaveRoomBesideEachOther() {
        Plot plot = plot();
        for (int place = 0; place <= 10; place++) {
            plot.tell(place, 1, "place " + place, List.of(new Plot.Value(5, "12.3")));
        }
        List<Chart.Slot> slots = plot.chart("", "").slots();
        assertThat(slots).hasSize(11);
        List<Double> shown = new ArrayList<>();
        slots.stream().filter(Chart.Slot::roomy).forEach(slot -> shown.add(slot.middle()));
        assertThat(shown).hasSizeBetween(3, 4);
        for (int each = 1; each < shown.size(); each++) {
            assertThat(shown.get(each) - shown.get(each - 1)).isGreaterThanOrEqualTo(4 * 7.4);
        }
    }

    @Test
    void monthsTellTheirFigureTheirBandAndWhatIsHeldAgainstThem() {
        YearMonth march = YearMonth.of(2026, 3);
        MonthPicture.Panel panel = new MonthPicture(
                        "Visits",
                        "trucks",
                        "planned",
                        List.of(
                                MonthPicture.Month.of(march, 12, 14.0),
                                MonthPicture.Month.of(march.plusMonths(1), Double.NaN, null),
                                MonthPicture.Month.band(march.plusMonths(2), 6, 4, 9, true)),
                        value -> String.valueOf((long) value))
                .panel();
        assertThat(panel.chart().slots())
                .extracting(Chart.Slot::words)
                .containsExactly("March 2026: 12, planned 14", "April 2026: not known", "May 2026: 6 (4 to 9)");
        assertThat(panel.chart().marks())
                .extracting(Chart.Mark::ink)
                .containsExactly(Ink.BAR, Ink.AGAINST, Ink.OUTLINE, Ink.RANGE);
        assertThat(panel.chart().lines()).extracting(Chart.Line::words).containsExactly("0", "5", "10", "15");
        assertThat(panel.chart().labels()).extracting(Chart.Label::words).containsExactly("12", "6");
    }

    @Test
    void monthsOfNothingHaveAnAxisAllTheSame() {
        Chart chart = new MonthPicture(
                        "Failures",
                        "trucks",
                        "",
                        List.of(MonthPicture.Month.of(YearMonth.of(2026, 3), 0, null)),
                        value -> String.valueOf((long) value))
                .panel()
                .chart();
        assertThat(chart.lines()).extracting(Chart.Line::words).containsExactly("0", "1");
    }
}
