package dev.injectorplanner.imports.propose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.tuple;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.match.MatchText;
import dev.injectorplanner.imports.propose.Proposer.Said;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Headings over two rows: a group above, such as Odometer over km and date. */
class TwoRowHeadingsTest {
    @TempDir
    private Path folder;

    @Test
    void aGroupAboveItsColumnsIsPartOfTheirHeadings() throws IOException {
        Path file = write("meters.csv", """
                Meters of all trucks,,,
                printed 2026-03-03,,,
                Unit,Odometer,,Remark
                ,km,date,
                T1,100000,2026-03-01,-
                T2,200000,2026-03-02,-
                """);
        Proposal proposal = new Proposer(KnownNames.NONE).propose(file, Said.NOTHING);
        assertThat(proposal.headingLine()).isEqualTo(4);
        assertThat(proposal.match().columns())
                .extracting(column -> column.heading() + " = " + column.column())
                .containsExactly(
                        "Unit = truck", "Odometer / km = odometer_km", "Odometer / date = taken_at", "Remark = ");
        assertThat(proposal.match().open()).isEmpty();

        ReadRows read = read(file, proposal.match());
        assertThat(read.of(Reading.class))
                .extracting(Reading::truck, Reading::odometerKm)
                .containsExactly(tuple("T1", 100_000.0), tuple("T2", 200_000.0));
        assertThat(read.remarks.toString()).contains("2 rows above the headings were left out");
    }

    @Test
    void groupsTellEqualHeadingsApart() throws IOException {
        Path file = write("injectors.csv", """
                Truck,Cyl,Part,Fitted,,Removed,
                ,,,date,km,date,km
                T1,3,I8,2024-02-01,250000,2026-01-15,410000
                """);
        FileMatch match = propose(file);
        assertThat(match.table()).isEqualTo("injectors");
        assertThat(match.columns())
                .extracting(column -> column.heading() + " = " + column.column())
                .contains(
                        "Fitted / date = fitted_on",
                        "Fitted / km = odometer_km",
                        "Removed / date = removed_on",
                        "Removed / km = removed_odometer_km");
        FittedInjector injector = read(file, match).of(FittedInjector.class).get(0);
        assertThat(injector.fittedOn()).isEqualTo(LocalDate.of(2024, 2, 1));
        assertThat(injector.removedOn()).isEqualTo(LocalDate.of(2026, 1, 15));
        assertThat(injector.odometerKm()).isEqualTo(250_000);
        assertThat(injector.removedOdometerKm()).isEqualTo(410_000);
    }

    @Test
    void mergedHeadingsOfAWorkbookAreReadToo() throws IOException {
        Path file = folder.resolve("meters.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            Sheet sheet = book.createSheet("March");
            cells(sheet, 0, "Meters, March 2026", "", "", "");
            sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 3));
            cells(sheet, 1, "Unit #", "Reading", "Odometer", "");
            cells(sheet, 2, "", "date", "mi", "hrs");
            sheet.addMergedRegion(new CellRangeAddress(1, 2, 0, 0));
            sheet.addMergedRegion(new CellRangeAddress(1, 1, 2, 3));
            cells(sheet, 3, "4100", "2026-03-01", "62137.1", "4,210.5 h");
            book.write(out);
        }
        FileMatch match = propose(file);
        assertThat(match.columns())
                .extracting(column -> column.heading() + " = " + column.column())
                .containsExactly(
                        "Unit # = truck",
                        "Reading / date = taken_at",
                        "Odometer / mi = odometer_mi",
                        "Odometer / hrs = engine_hours");
        Reading reading = read(file, match).of(Reading.class).get(0);
        assertThat(reading.odometerKm()).isCloseTo(100_000.0, offset(0.1));
        assertThat(reading.engineHours()).isEqualTo(4_210.5);
    }

    @Test
    void aTitleOverTheHeadingsIsNoGroup() throws IOException {
        FileMatch title = propose(write("a.csv", "Odometers,,\nUnit,Date,Odometer km\nT1,2026-03-01,1000\n"));
        assertThat(title.columns())
                .extracting(column -> column.heading())
                .containsExactly("Unit", "Date", "Odometer km");
        FileMatch first =
                propose(write("b.csv", "Unit,Date,Odometer km,Remark\nT1,2026-03-01,1000,\nT2,2026-03-01,2,\n"));
        assertThat(first.columns())
                .extracting(column -> column.heading())
                .containsExactly("Unit", "Date", "Odometer km", "Remark");
        FileMatch words = propose(write("trucks.csv", "Truck,Depot,Engine,Remark\nT-1,North,V8,\nT-2,South,V8,\n"));
        assertThat(words.columns())
                .extracting(column -> column.heading())
                .containsExactly("Truck", "Depot", "Engine", "Remark");
    }

    @Test
    void templateHeadingsOverTwoRowsNeedNoMatch() throws IOException {
        Path file = write("readings.csv", "truck,taken at,odometer,engine\n,,km,hours\nT1,2026-03-01T06:00Z,1000,20\n");
        ReadRows read = ReadRows.of(file, KnownNames.NONE);
        assertThat(read.of(Reading.class)).extracting(Reading::odometerKm).containsExactly(1_000.0);
    }

    private FileMatch propose(Path file) {
        FileMatch match =
                new Proposer(KnownNames.NONE).propose(file, Said.NOTHING).match();
        return MatchText.parse(Path.of("x.match.yaml"), MatchFile.text(match, Map.of())); // as it is kept
    }

    private static ReadRows read(Path file, FileMatch match) {
        return ReadRows.of(file, KnownNames.NONE, match);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static void cells(Sheet sheet, int at, String... cells) {
        var row = sheet.createRow(at);
        for (int i = 0; i < cells.length; i++) {
            if (!cells[i].isEmpty()) {
                row.createCell(i).setCellValue(cells[i]);
            }
        }
    }
}
