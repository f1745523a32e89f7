package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.cell.CellNames;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Workbooks: real dates and numbers, formulas, several sheets, hidden and merged ones. */
class WorkbookTest {
    @TempDir
    Path folder;

    static Stream<Table<?>> tables() {
        return Tables.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("tables")
    <R> void rowsOfEveryTableSurviveAsTexts(Table<R> table) {
        List<R> rows = new RandomRows(11).of(table, 60);
        Path file = Workbooks.write(folder.resolve("book.xlsx"), workbook -> {
            Sheet sheet = workbook.createSheet(table.name());
            Workbooks.row(sheet, 2, table.columns().stream().map(Column::name).toArray());
            for (int i = 0; i < rows.size(); i++) {
                Workbooks.row(sheet, 5 + i, table.cells(rows.get(i)).toArray());
            }
        });

        Collected read = Collected.of(file);

        assertThat(read.complaints()).isEmpty();
        assertThat(read.rows).isEqualTo(rows);
        assertThat(read.places.get(0).line()).isEqualTo(6);
    }

    @Test
    void realDatesAndNumbersAreTaken() {
        Path file = Workbooks.write(folder.resolve("book.xlsx"), workbook -> {
            Sheet readings = workbook.createSheet("readings");
            Workbooks.row(readings, 0, "truck", "taken_at", "odometer_km", "meter_replaced");
            Workbooks.row(readings, 1, 17, LocalDateTime.of(2026, 4, 3, 8, 30), 120_500.25, true);
            Workbooks.row(readings, 2, 17, LocalDate.of(2026, 4, 4), 0.1 + 0.2, false);
            Sheet capacity = workbook.createSheet("capacity");
            Workbooks.row(capacity, 0, "depot", "date", "labour_hours", "bays");
            Workbooks.row(capacity, 1, "D", LocalDate.of(2024, 2, 29), 7.5, 2);
        });

        Collected read = Collected.of(file);

        assertThat(read.complaints()).isEmpty();
        assertThat(read.rows)
                .containsExactly(
                        new CapacityOverride("D", LocalDate.of(2024, 2, 29), 7.5, 2),
                        new Reading("17", java.time.Instant.parse("2026-04-03T13:30:00Z"), 120_500.25, null, true),
                        new Reading("17", java.time.Instant.parse("2026-04-04T05:00:00Z"), 0.1 + 0.2, null, false));
    }

    @Test
    void daysMayBeCountedFrom1904() {
        Path file = Workbooks.change(
                Workbooks.write(folder.resolve("mac.xlsx"), Workbooks::readings),
                "xl/workbook.xml",
                xml -> xml.replace("<workbookPr date1904=\"false\"/>", "<workbookPr date1904=\"1\"/>"));

        assertThat(((Reading) Collected.of(file).rows.get(0)).takenAt()).isEqualTo("2030-04-04T13:00:00Z");
    }

    @Test
    void formulasGiveTheirSavedResultAndErrorsAreRefused() {
        Path file = Workbooks.write(folder.resolve("stock.xlsx"), workbook -> {
            Sheet sheet = workbook.createSheet("Sheet1");
            Workbooks.row(sheet, 0, "depot", "part", "on_hand");
            Workbooks.row(sheet, 1, "D", "P1").createCell(2, CellType.FORMULA).setCellFormula("2+2");
            Workbooks.row(sheet, 2, "D", "P2").createCell(2, CellType.FORMULA).setCellFormula("1/0");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            Row late = Workbooks.row(sheet, 3, "D", "P3");
            late.createCell(2, CellType.FORMULA).setCellFormula("3+3");
            Workbooks.row(sheet, 4, "D", "P4", 5, null, "look at this");
        });

        Collected read = Collected.of(Workbooks.change(
                file, "xl/worksheets/sheet1.xml", xml -> xml.replace("<f>3+3</f><v>0.0</v>", "<f>3+3</f>")));

        assertThat(read.rows).hasToString("[StockLine[depot=D, part=P1, onHand=4.0]]");
        assertThat(read.complaints())
                .containsExactly(
                        "stock.xlsx, sheet \"Sheet1\", C3, on_hand \"#DIV/0!\": holds the spreadsheet error #DIV/0!."
                                + " Fix: correct the formula, or enter the value.",
                        "stock.xlsx, sheet \"Sheet1\", C4, on_hand \"#NO RESULT!\": holds a formula whose result was"
                                + " not saved. Fix: open the workbook in a spreadsheet program and save it, or enter"
                                + " the value.",
                        "stock.xlsx, sheet \"Sheet1\", E5: the row has cells beyond the headings."
                                + " Fix: clear the cell, or give it a heading.");
    }

    @Test
    void percentagesAreReadAsTheyAreShown() {
        Path file = Workbooks.write(folder.resolve("access.xlsx"), workbook -> {
            Sheet sheet = workbook.createSheet("access");
            Workbooks.row(sheet, 0, "family", "step", "order", "hours", "drains_coolant_percent");
            Row row = Workbooks.row(sheet, 1, "V8", "coolant down", 1, 0.5, 0.55);
            row.getCell(4).setCellStyle(Workbooks.style(sheet, "0%"));
        });

        assertThat(((AccessStep) Collected.of(file).rows.get(0)).drainsCoolantPercent())
                .isEqualTo(55);
    }

    @Test
    void sheetsAreReadInTheOrderOfLoadingAndOthersAreSaid() {
        Path file = Workbooks.write(folder.resolve("fleet.xlsx"), workbook -> {
            Workbooks.row(workbook.createSheet("Notes"), 0, "from Ann", "to all");
            Workbooks.readings(workbook);
            Sheet groups = workbook.createSheet("Duty Groups");
            Workbooks.row(groups, 0, "Duty group", "Minimum on road", "Downtime per day");
            Workbooks.row(groups, 1, "long haul", 3, 900);
            Sheet old = workbook.createSheet("Readings old");
            Workbooks.row(old, 0, "truck", "taken_at", "odometer_km");
            Workbooks.row(old, 1, "T1", LocalDateTime.of(2026, 4, 3, 8, 0), 7);
            Workbooks.row(workbook.createSheet("away"), 0, "truck", "from", "to");
            Workbooks.row(workbook.createSheet("stock"), 0, "depot", "part", "on_hand");
            workbook.setSheetHidden(5, true);
        });

        Collected read = Collected.of(file);

        assertThat(read.tables).containsExactly(Tables.DUTY_GROUPS, Tables.READINGS);
        assertThat(read.remarks)
                .containsExactly(
                        "fleet.xlsx, sheet \"stock\": is hidden and was not read; show it in the workbook if it should be.",
                        "fleet.xlsx, sheet \"Notes\": matches no table and was not read.",
                        "fleet.xlsx, sheet \"away\": has headings but no rows.");
        assertThat(read.complaints())
                .containsExactly("fleet.xlsx, sheet \"Readings old\", row 2, truck, taken_at \"T1,"
                        + " 2026-04-03T13:00:00Z\": is also in row 2 of sheet \"Readings\", with different values."
                        + " Fix: keep the correct one.");
    }

    @Test
    void mergedAreasAndHiddenRowsAreSaid() {
        Path file = Workbooks.write(folder.resolve("stock.xlsx"), workbook -> {
            Sheet sheet = workbook.createSheet("stock");
            Workbooks.row(sheet, 0, "depot", "part", "on_hand");
            Workbooks.row(sheet, 1, "D", "P1", 4);
            Workbooks.row(sheet, 2, null, "P2", 5);
            Workbooks.row(sheet, 3, "D", "P3", 6).setZeroHeight(true);
            sheet.addMergedRegion(CellRangeAddress.valueOf("A2:A3"));
        });

        Collected read = Collected.of(file);

        assertThat(read.rows).hasSize(2);
        assertThat(read.complaints())
                .containsExactly("stock.xlsx, sheet \"stock\", A3, depot (empty): is empty. Fix: enter it: the depot.");
        assertThat(read.remarks)
                .containsExactly(
                        "stock.xlsx, sheet \"stock\": hidden rows (1) were read like the others.",
                        "stock.xlsx, sheet \"stock\": merged areas (1): only the first cell of each holds its value;"
                                + " the others are empty.");
    }

    @Test
    void theContentCountsAndNotTheName() throws IOException {
        Path book = Workbooks.write(folder.resolve("book.xlsx"), Workbooks::readings);
        Path misnamed = Files.copy(book, folder.resolve("book.csv"), StandardCopyOption.REPLACE_EXISTING);
        assertThat(Collected.of(misnamed).rows).hasSize(1);
        Path macros = Workbooks.change(
                Files.copy(book, folder.resolve("book.xlsm")),
                "[Content_Types].xml",
                xml -> xml.replace(
                        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                        "application/vnd.ms-excel.sheet.macroEnabled.main+xml"));
        assertThat(Collected.of(macros).rows).hasSize(1);
    }

    @Test
    void aNamedTableAmongSeveralSheetsIsTheOneThatFits() {
        Path file = Workbooks.write(folder.resolve("two.xlsx"), workbook -> {
            Workbooks.row(workbook.createSheet("Notes"), 0, "from Ann", "to all");
            Workbooks.readings(workbook);
        });

        assertThat(Collected.of(file, Collected.usual().withAs(Tables.READINGS)).rows)
                .hasSize(1);
        assertThatThrownBy(() -> Collected.of(file, Collected.usual().withAs(Tables.STOCK)))
                .isInstanceOf(FileRefusedException.class)
                .hasMessage("two.xlsx: has no sheet with the columns of table stock."
                        + " Fix: name the headings as in the template.");
    }

    @Test
    void columnsOfASheetHaveLetters() {
        assertThat(CellNames.column(0)).isEqualTo("A");
        assertThat(CellNames.column(25)).isEqualTo("Z");
        assertThat(CellNames.column(26)).isEqualTo("AA");
        assertThat(CellNames.column(16_383)).isEqualTo("XFD");
        for (int at = 0; at < 16_384; at++) {
            assertThat(CellNames.columnOf(CellNames.column(at) + "7")).isEqualTo(at);
        }
        assertThat(CellNames.columnOf("7")).isEqualTo(-1);
    }
}
