package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.file.TextScan;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headings by name in any order; what is not known is said; tables found by name and by headings. */
class HeadingsTest {
    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void unknownColumnsAreSaidAndIgnored() throws IOException {
        Collected read = Collected.of(file("readings.csv", """
                truck,taken_at,odometer_km,driver,engine huors
                T1,2026-04-03T08:00Z,7,Ann,9
                """));

        assertThat(read.rows).hasSize(1);
        assertThat(read.remarks)
                .containsExactly(
                        "readings.csv: column \"driver\" is not known in table readings and was ignored.",
                        "readings.csv: column \"engine huors\" is not known in table readings and was ignored"
                                + " (did you mean engine_hours?).");
    }

    @ParameterizedTest
    @CsvSource({"taken_at_dmy,2026-04-03T05:00:00Z", "Taken at (MDY),2026-03-04T06:00:00Z"})
    void aHeadingSaysTheOrderOfDayAndMonth(String heading, String expected) throws IOException {
        Collected read = Collected.of(file("readings.csv", "truck," + heading + ",odometer_km\nT1,03/04/2026,7\n"));

        assertThat(((Reading) read.rows.get(0)).takenAt()).isEqualTo(expected);
    }

    @Test
    void soDoesASettingAndWithoutEitherTheRowIsRefused() throws IOException {
        Path file = file("readings.csv", "truck,taken_at,odometer_km\nT1,03/04/2026,7\n");

        assertThat(Collected.of(file).complaints())
                .containsExactly("readings.csv, line 2, taken_at \"03/04/2026\": can be read in two ways, 2026-04-03 or"
                        + " 2026-03-04. Fix: write it as yyyy-mm-dd, or end the heading in _dmy or _mdy to say which"
                        + " comes first.");
        assertThat(Collected.of(file, Collected.usual().withDates(DateOrder.DAY_FIRST)).rows)
                .hasSize(1);
    }

    @Test
    void windows1252AndSemicolonsAreSaid() throws IOException {
        Path file = folder.resolve("duty_groups.csv");
        Files.write(
                file, "duty_group;minimum_on_road;downtime_per_day\nM\u00FCnchen;3;1200,50\n".getBytes("windows-1252"));

        Collected read = Collected.of(file);

        assertThat(read.remarks)
                .containsExactly(
                        "duty_groups.csv: line 2 is not UTF-8; the file was read as Windows-1252.",
                        "duty_groups.csv: the cells are separated by semicolons.");
        assertThat(read.rows)
                .hasToString("[DutyGroup[dutyGroup=M\u00FCnchen, minimumOnRoad=3, downtimePerDay=1200.50]]");
    }

    @Test
    void aByteThatIsNotUtf8IsFoundBehindTheFirstBuffers() throws IOException {
        Path file = folder.resolve("readings.csv");
        StringBuilder text = new StringBuilder("truck,taken_at,odometer_km\n");
        for (int i = 0; i < 20_000; i++) {
            text.append("\u00C4,2026-04-03T08:00Z,").append(i).append('\n');
        }
        Files.writeString(file, text);
        assertThat(TextScan.of(file).firstLineNotUtf8()).isZero();
        Files.write(file, (text + "x").getBytes(java.nio.charset.StandardCharsets.UTF_8));
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length - 1] = (byte) 0xE4;
        Files.write(file, bytes);
        assertThat(TextScan.of(file).firstLineNotUtf8()).isEqualTo(20_002);
    }

    @ParameterizedTest
    @CsvSource({
        "trucks,trucks",
        "Trucks 2,trucks",
        "trucks-2026,trucks",
        "2026_TRUCKS_final,trucks",
        "engine families,engine_families",
        "EngineFamilies,engine_families",
        "job_parts new,job_parts",
        "fleet.xlsx.Trucks.refused,trucks",
        "spare parts list,parts"
    })
    void aTableIsFoundByName(String name, String table) {
        assertThat(TableFinder.byName(name)).hasToString(table);
    }

    @ParameterizedTest
    @CsvSource({"parts for trucks", "truckstop", "fleet", "2026"})
    void otherNamesFindNone(String name) {
        assertThat(TableFinder.byName(name)).isNull();
    }

    @Test
    void everyTableIsFoundByItsOwnHeadings() {
        for (Table<?> table : Tables.ALL) {
            assertThat(TableFinder.byHeadings(
                            table.columns().stream().map(Column::name).toList()))
                    .isSameAs(table);
        }
    }

    @Test
    void aFileOfAnotherNameIsReadByItsHeadings() throws IOException {
        assertThat(Collected.of(file("export 17.csv", "truck,from,to\nT1,2026-04-03,2026-04-05\n")).tables)
                .containsExactly(Tables.AWAY);
    }

    @Test
    void unknownTablesAreRefusedWithTheNamesThereAre() {
        assertThat(Tables.find("Duty Groups")).contains(Tables.DUTY_GROUPS);
        assertThatThrownBy(() -> Tables.get("lorries"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessage("table \"lorries\": no such table. Fix: name one of " + Tables.names() + ".");
        assertThat(Tables.ALL).hasSize(25).doesNotHaveDuplicates();
    }

    @Test
    void referencesAreLoadedBeforeWhatRefersToThem() {
        assertThat(Tables.ALL.indexOf(Tables.PARTS)).isLessThan(Tables.ALL.indexOf(Tables.ENGINE_FAMILIES));
        assertThat(Tables.ALL.indexOf(Tables.ENGINE_FAMILIES)).isLessThan(Tables.ALL.indexOf(Tables.ACCESS));
        assertThat(Tables.ALL.indexOf(Tables.ACCESS)).isLessThan(Tables.ALL.indexOf(Tables.JOB_PARTS));
        assertThat(Tables.ALL.subList(0, Tables.ALL.indexOf(Tables.TRUCKS)))
                .contains(Tables.DEPOTS, Tables.ENGINE_FAMILIES, Tables.DUTY_GROUPS);
        assertThat(Tables.ALL.indexOf(Tables.TRUCKS)).isLessThan(Tables.ALL.indexOf(Tables.INJECTORS));
    }
}
