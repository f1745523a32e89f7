package dev.injectorplanner.app.web.office;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.web.office.TablesView.Cell;
import dev.injectorplanner.app.web.office.TablesView.Rows;
import dev.injectorplanner.app.web.office.TablesView.Section;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A described table on a page: in the site's units and form; a US gallon is 3.785411784 l. */
class PageCellTest {
    private record Draw(String truck, LocalDate day, double litres, int cans, String remark) {}

    private static final List<TableColumn<Draw>> COLUMNS = List.of(
            TableColumn.text("Truck", 9, Draw::truck),
            TableColumn.date("Day", 12, Draw::day),
            TableColumn.figure("Drained", Unit.LITRES, 9, Draw::litres),
            TableColumn.count("Cans", 6, Draw::cans),
            TableColumn.wrapped("Remark", 30, Draw::remark));

    private static Section shown(SiteUnits units) {
        Draw draw = new Draw("12 l", LocalDate.of(2026, 3, 2), 37.85411784, 1_200, "30 l at most");
        return Rows.of("A", "Draws", units, COLUMNS, List.of(draw), row -> "/trucks/" + row.litres())
                .section("", "", "none");
    }

    @Test
    void litres_as_they_are() {
        Section section = shown(SiteUnits.METRIC);
        assertThat(section.columns())
                .extracting(TablesView.Column::name)
                .containsExactly("Truck", "Day", "Drained l", "Cans", "Remark");
        assertThat(section.columns())
                .extracting(TablesView.Column::figure)
                .containsExactly(false, false, true, true, false);
        assertThat(section.rows().get(0))
                .extracting(Cell::text)
                .containsExactly("12 l", "2\u00a0Mar\u00a02026", "37.9", "1,200", "30 l at most");
        assertThat(section.rows().get(0).get(0).link()).isEqualTo("/trucks/37.85411784");
    }

    @Test
    void gallons_in_figures_headings_and_remarks_but_not_in_names() {
        SiteUnits units =
                new SiteUnits(SiteUnits.Distance.MILES, SiteUnits.Volume.US_GALLONS, SiteUnits.Temperature.FAHRENHEIT);
        Section section = shown(units);
        assertThat(section.columns().get(2).name()).isEqualTo("Drained " + units.volumeUnit());
        List<Cell> row = section.rows().get(0);
        assertThat(row.get(0).text()).isEqualTo("12 l");
        assertThat(row.get(2).text()).isEqualTo(units.volumeFigure(37.85411784)).startsWith("10");
        assertThat(row.get(4).text()).isEqualTo(units.sentence("30 l at most")).startsWith("7.9");
    }
}
