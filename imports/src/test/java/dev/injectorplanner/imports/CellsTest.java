package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.imports.cell.CellContext;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.CylinderCells;
import dev.injectorplanner.imports.cell.DateCells;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.DayCells;
import dev.injectorplanner.imports.cell.InstantCells;
import dev.injectorplanner.imports.cell.NumberCells;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in a cell and how it is read; what can be read two ways is refused. */
class CellsTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    private static CellContext context(DateOrder dates) {
        return new CellContext("column", dates, "T1", truck -> CHICAGO);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "12|12",
                "12.5|12.5",
                "12,5|12.5",
                "1,23|1.23",
                "1,2345|1.2345",
                "0,123|0.123",
                "1234,567|1234.567",
                "1 234 567,5|1234567.5",
                "1\u2009234|1234",
                "1\u00A0234|1234",
                "1\u202F234.5|1234.5",
                "1'234|1234",
                "1,234,567|1234567",
                "1,234.5|1234.5",
                "1.234,5|1234.5",
                "1.234.567|1234567",
                "1.234|1.234",
                "-12.5|-12.5",
                "\u221212|-12",
                "+7|7",
                ".5|0.5",
                "5.|5",
                "1e3|1000",
                "1.5E-3|0.0015"
            })
    void numbers(String text, double expected) {
        assertThat(NumberCells.number("column", text)).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-Infinity",
                "0x1F",
                "1e999",
                "1e9999",
                "12 km",
                "$5",
                "five",
                "1,2,3",
                "1.2.3",
                "--1",
                "1 23",
                "1d",
                "1f",
                "٣",
                "-",
                ".",
                "e5",
                "50%"
            })
    void noNumbers(String text) {
        assertThatThrownBy(() -> NumberCells.number("column", text)).isInstanceOf(InvalidValueException.class);
    }

    @Test
    void aCommaBeforeThreeDigitsReadsTwoWays() {
        assertThatThrownBy(() -> NumberCells.number("column", "1,234"))
                .hasMessage(
                        "column \"1,234\": can be read in two ways, 1234 or 1.234. Fix: write it without a thousands"
                                + " separator and with a dot for decimals.");
    }

    @Test
    void wholeNumbersRefuseHalves() {
        assertThat(NumberCells.whole("column", "3.0")).isEqualTo(3);
        assertThatThrownBy(() -> NumberCells.whole("column", "3.5")).hasMessageContaining("is not a whole number");
        assertThatThrownBy(() -> NumberCells.whole("column", "3000000000")).hasMessageContaining("is too large");
    }

    @Test
    void percentagesAndChances() {
        assertThat(NumberCells.percent("column", "55 %")).isEqualTo(55);
        assertThat(NumberCells.percent("column", "55")).isEqualTo(55);
        assertThat(NumberCells.chance("column", "80%")).isEqualTo(0.8);
        assertThat(NumberCells.chance("column", "0.8")).isEqualTo(0.8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-04-03|2026-04-03",
                "2026/04/03|2026-04-03",
                "2026-4-3|2026-04-03",
                "20260403|2026-04-03",
                "25/04/2026|2026-04-25",
                "04/25/2026|2026-04-25",
                "04/04/2026|2026-04-04",
                "3.4.2026|2026-04-03",
                "03.04.2026|2026-04-03",
                "3 Apr 2026|2026-04-03",
                "3-April-2026|2026-04-03",
                "Apr 3, 2026|2026-04-03",
                "April 3rd 2026|2026-04-03",
                "Sept 30, 2026|2026-09-30",
                "2026-04-03 00:00:00|2026-04-03",
                "2026-04-03T00:00|2026-04-03",
                "29.02.2024|2024-02-29"
            })
    void days(String text, LocalDate expected) {
        assertThat(DateCells.date(text, context(DateOrder.UNSTATED))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "03/04/2026|can be read in two ways, 2026-04-03 or 2026-03-04",
                "03-04-2026|can be read in two ways, 2026-04-03 or 2026-03-04",
                "03/04/26|gives the year with two digits",
                "3 Apr 26|gives the year with two digits",
                "2026-02-30|there is no day 30 of month 2 in 2026",
                "29.02.2025|there is no day 29 of month 2 in 2025",
                "13/13/2026|there is no day 13 of month 13 in 2026",
                "0026-04-03|the year must be from 1950 to 2150",
                "46115|is a number, not a date",
                "2026-04-03 08:00|is not a date",
                "2026-04/03|is not a date",
                "3 Mai 2026|is not a date",
                "soon|is not a date"
            })
    void noDays(String text, String reason) {
        assertThatThrownBy(() -> DateCells.date(text, context(DateOrder.UNSTATED)))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining(reason);
    }

    @Test
    void theStatedOrderOfDayAndMonthHolds() {
        assertThat(DateCells.date("03/04/2026", context(DateOrder.DAY_FIRST))).isEqualTo("2026-04-03");
        assertThat(DateCells.date("03/04/2026", context(DateOrder.MONTH_FIRST))).isEqualTo("2026-03-04");
        assertThatThrownBy(() -> DateCells.date("25/04/2026", context(DateOrder.MONTH_FIRST)))
                .hasMessageContaining("there is no day 4 of month 25");
    }

    /** Chicago's clocks: UTC-6, UTC-5 from 8 March to 1 November 2026 (IANA time zone database). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-04-03T08:00:00Z|2026-04-03T08:00:00Z",
                "2026-04-03T08:00+02:00|2026-04-03T06:00:00Z",
                "2026-04-03 08:00 +0200|2026-04-03T06:00:00Z",
                "2026-04-03 08:00 UTC|2026-04-03T08:00:00Z",
                "2026-04-03 08:00|2026-04-03T13:00:00Z",
                "2026-04-03|2026-04-03T05:00:00Z",
                "2026-01-03|2026-01-03T06:00:00Z",
                "25/04/2026 2:30 pm|2026-04-25T19:30:00Z",
                "Apr 3, 2026 12:05 AM|2026-04-03T05:05:00Z",
                "2026-04-03T08:00:00.123456789Z|2026-04-03T08:00:00.123456Z",
                "2026-03-08 02:30|2026-03-08T08:30:00Z",
                "2026-11-01 01:30|2026-11-01T06:30:00Z"
            })
    void moments(String text, Instant expected) {
        assertThat(InstantCells.instant(text, context(DateOrder.UNSTATED))).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-04-03 25:00",
                "2026-04-03 08:61",
                "2026-04-03 13:00 pm",
                "2026-04-03 08:00 CET",
                "03/04/2026 08:00",
                "08:00",
                "2026-04-03T08:00+25:00",
                "2026-04-03T",
                "now"
            })
    void noMoments(String text) {
        assertThatThrownBy(() -> InstantCells.instant(text, context(DateOrder.UNSTATED)))
                .isInstanceOf(InvalidValueException.class);
    }

    @Test
    void aLocalTimeNeedsTheDepotOfTheTruck() {
        CellContext unknown = new CellContext("taken_at", DateOrder.UNSTATED, "T9", truck -> null);
        assertThatThrownBy(() -> InstantCells.instant("2026-04-03", unknown))
                .hasMessageContaining("is a local time, and the depot of truck \"T9\" is not known");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 3 5 7", "1,3,5,7", "1;3;5;7", "1-3-5-7", "1, 3, 5, 7", "1 / 3 / 5 / 7", "1 3-3 5 7"})
    void listsOfCylinders(String text) {
        assertThat(CylinderCells.cylinders("cylinders", text)).containsExactly(1, 3, 5, 7);
    }

    @Test
    void rangesOfCylindersAndAll() {
        assertThat(CylinderCells.cylinders("cylinders", "1-4")).containsExactly(1, 2, 3, 4);
        assertThat(CylinderCells.cylinders("cylinders", "1 to 3, 7 - 8")).containsExactly(1, 2, 3, 7, 8);
        assertThat(CylinderCells.cylinders("cylinders", "ALL")).isEmpty();
        assertThat(CylinderCells.sequence("firing_order", "1-2")).containsExactly(1, 2);
        assertThat(CylinderCells.sequence("firing_order", "1-8-4-3-6-5-7-2")).containsExactly(1, 8, 4, 3, 6, 5, 7, 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"4-1", "one", "1,,x", "rear", "1.5.", "100"})
    void noListsOfCylinders(String text) {
        assertThatThrownBy(() -> CylinderCells.cylinders("cylinders", text)).isInstanceOf(InvalidValueException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "left 1 3 5 7; right 2 4 6 8",
                "left: 1,3,5,7 | right: 2,4,6,8",
                "left=1-3-5-7;right=2-4-6-8",
                "left 1/3/5/7; right 2/4/6/8;"
            })
    void banks(String text) {
        assertThat(CylinderCells.banks("banks", text))
                .containsExactly(new Bank("left", List.of(1, 3, 5, 7)), new Bank("right", List.of(2, 4, 6, 8)));
    }

    @Test
    void oneBankNeedsNoName() {
        assertThat(CylinderCells.banks("banks", "1-6")).containsExactly(new Bank("inline", List.of(1, 2, 3, 4, 5, 6)));
        assertThatThrownBy(() -> CylinderCells.banks("banks", "1 3; 2 4"))
                .hasMessageContaining("two banks the same name");
        assertThatThrownBy(() -> CylinderCells.banks("banks", "left")).hasMessageContaining("is not a list");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Mon-Fri",
                "Monday to Friday",
                "mon tue wed thu fri",
                "Mon,Tue,Wed,Thu,Fri",
                "Mon - Wed, Thurs; Fri."
            })
    void workDays(String text) {
        assertThat(DayCells.read("work_days", text)).isEqualTo(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY));
        assertThat(DayCells.write(DayCells.read("work_days", text))).isEqualTo("Mon-Fri");
    }

    @Test
    void otherWorkDays() {
        assertThat(DayCells.write(DayCells.read("work_days", "Sat-Mon"))).isEqualTo("Mon Sat Sun");
        assertThat(DayCells.read("work_days", "all")).hasSize(7);
        assertThatThrownBy(() -> DayCells.read("work_days", "Lun-Ven")).hasMessageContaining("does not name days");
        assertThatThrownBy(() -> DayCells.read("work_days", "1-5")).hasMessageContaining("does not name days");
    }

    @Test
    void namesYesNoAndZones() {
        CellContext context = context(DateOrder.UNSTATED);
        for (String text : List.of("return_flow", "Return flow", "RETURN-FLOW")) {
            assertThat(CellKinds.choice(TestKind.class).read(text, context)).isEqualTo(TestKind.RETURN_FLOW);
        }
        assertThatThrownBy(() -> CellKinds.choice(TestKind.class).read("leak", context))
                .hasMessage(
                        "column \"leak\": is not a known name. Fix: write one of balance, return_flow, contribution.");
        for (String yes : List.of("yes", "TRUE", "1", "y")) {
            assertThat(CellKinds.YES_NO.read(yes, context)).isTrue();
        }
        for (String no : List.of("no", "False", "0", "N")) {
            assertThat(CellKinds.YES_NO.read(no, context)).isFalse();
        }
        assertThatThrownBy(() -> CellKinds.YES_NO.read("maybe", context)).hasMessageContaining("neither yes nor no");
        assertThat(CellKinds.ZONE.read("america/chicago", context)).isEqualTo(CHICAGO);
        assertThatThrownBy(() -> CellKinds.ZONE.read("Central", context))
                .hasMessageContaining("is not an IANA time zone");
    }
}
