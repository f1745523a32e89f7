package dev.injectorplanner.imports.match;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.CellForm;
import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.table.Tables;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/** How the cells of a matched file are read. */
class MatchedFilesTest {
    @Test
    void refusedRowsBelongToTheSourceOfTheirFile() {
        FileMatch match = match(NumberForm.UNSTATED, "Odo", "odometer_mi");
        List<String> headings = List.of(
                "refused_line",
                "refused_column",
                "refused_value",
                "refused_reason",
                "refused_fix",
                "Unit",
                "When",
                "Odo");
        assertThat(FileMatch.keyOf(headings)).isEqualTo(match.key());
        assertThat(match.unknownOf(headings)).isEmpty();
        assertThat(MatchedLayout.of(match, Tables.get("readings"), headings).places())
                .extracting(place -> place.at())
                .contains(List.of(5), List.of(6), List.of(7));
    }

    @Test
    void aUnitThatIsNotTheColumnsIsNeverIgnored() {
        CellForm miles = form(match(NumberForm.POINT, "Odo", "odometer_mi"), "odometer_km");
        assertThat(miles.plain("odometer_mi", "482100 mi")).isEqualTo("482100");
        assertThat(miles.plain("odometer_mi", "482100 km")).isEqualTo("482100 km");
        Assertions.assertThatThrownBy(() -> ColumnUnit.refuseOther("odometer_mi", "482,100 km", ColumnUnit.MILES))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("is in km, the column in mi");
        ColumnUnit.refuseOther("odometer_mi", "482,100 miles", ColumnUnit.MILES);
        ColumnUnit.refuseOther("engine_hours", "812 h", null);
    }

    @Test
    void aNumberOfTheOtherFormIsRefused() {
        CellForm comma = form(match(NumberForm.COMMA, "Odo", "odometer_mi"), "odometer_km")
                .ofText();
        assertThat(comma.plain("odometer_mi", "490.254")).isEqualTo("490254");
        assertThat(comma.plain("odometer_mi", "490.254,5")).isEqualTo("490.254,5");
        for (String other : List.of("490,254.5", "12.5", "1,490,254")) {
            Assertions.assertThatThrownBy(() -> comma.plain("odometer_mi", other))
                    .as(other)
                    .isInstanceOf(InvalidValueException.class)
                    .hasMessageContaining("is not written as 1.234,5");
        }
        CellForm point = form(match(NumberForm.POINT, "Odo", "odometer_mi"), "odometer_km");
        for (String other : List.of("490.254,5", "12,5", "1.490.254")) {
            Assertions.assertThatThrownBy(() -> point.plain("odometer_mi", other))
                    .as(other)
                    .isInstanceOf(InvalidValueException.class);
        }
    }

    @Test
    void cylindersFromZeroAreShiftedHoweverTheyAreWritten() {
        Map<String, String> shift = Map.of("0", "1", "1", "2", "2", "3", "7", "8");
        CellForm form = new CellForm(
                NumberForm.UNSTATED, true, Set.of(), List.of(), shift, 0, false, false, UnaryOperator.identity());
        assertThat(form.plain("cylinder", "Cyl 0")).isEqualTo("1");
        assertThat(form.plain("cylinder", "07")).isEqualTo("8");
        assertThat(form.plain("cylinders", "0-2")).isEqualTo("1-3");
        assertThat(form.plain("cylinders", "0, 7")).isEqualTo("1, 8");
        assertThat(form.plain("cylinders", "all 6")).isEqualTo("all 6");
        assertThat(form.plain("cylinders", "bank 1")).isEqualTo("bank 1");
    }

    private static CellForm form(FileMatch match, String column) {
        return MatchedLayout.of(match, Tables.get("readings"), List.of("Unit", "When", "Odo")).places().stream()
                .filter(place -> place.column().name().equals(column)
                        || place.column().headings().contains(column))
                .findFirst()
                .orElseThrow()
                .form();
    }

    private static FileMatch match(NumberForm numbers, String heading, String means) {
        return new FileMatch(
                "x.csv",
                "readings",
                List.of(
                        ColumnMatch.of("Unit", "truck"),
                        ColumnMatch.of("When", "taken_at"),
                        ColumnMatch.of(heading, means)),
                numbers,
                DateOrder.UNSTATED,
                0,
                List.of(),
                List.of("km", "mi", "h"),
                Map.of(),
                Set.of());
    }
}
