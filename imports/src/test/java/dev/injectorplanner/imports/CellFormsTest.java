package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.match.MatchText;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Table;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each form in which offices write a cell, with its reading under a match. */
class CellFormsTest {
    private static final String MATCH = """
            source: "odo.csv"
            table: readings
            numbers: "%s"
            dates: "%s"
            two_digit_years: "20yy"
            empty: ["-", "n/a", "unknown"]
            ignore: ["$", "km", "mi", "h"]
            columns:
              "Unit": {to: "truck", values: {"T 118": "T118"}, blank: "as above"}
              "Date": "taken_at"
              "KM": "odometer_km"
              "Hrs": "engine_hours"
              "Card": "not used"
            fixed: {}
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,234.5|490,254|490254.0",
                "1,234.5|490,254.5|490254.5",
                "1,234.5|1,490,254|1490254.0",
                "1,234.5|490.254|490.254",
                "1,234.5|490254|490254.0",
                "1,234.5|490,254 km|490254.0",
                "1,234.5|$490,254|490254.0",
                "1.234,5|490.254|490254.0",
                "1.234,5|490.254,5|490254.5",
                "1.234,5|490,254|490.254",
                "1.234,5|8,5|8.5",
                "1.234,5|490254,25|490254.25",
                "1.234,5|490 254|490254.0",
                "1.234,5|0,125|0.125",
                "plain|490 254,5|490254.5",
                "plain|12.5|12.5"
            })
    void numbers(String form, String cell, double reading) throws IOException {
        Collected read = read(form, "dmy", "T1;01.02.2026;" + quoted(cell) + ";5;x");
        assertThat(read.complaints).isEmpty();
        assertThat(read.rows).singleElement().asString().contains("odometerKm=" + reading);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dmy|3/4/2026|2026-04-03",
                "mdy|3/4/2026|2026-03-04",
                "mdy|3/14/26|2026-03-14",
                "dmy|14.3.26|2026-03-14",
                "mdy|3/14/2026 2:05 PM|2026-03-14T14:05:00Z",
                "none|2026-03-14|2026-03-14",
                "none|14 Mar 2026|2026-03-14"
            })
    void dates(String order, String cell, String reading) throws IOException {
        Collected read = read("plain", order, "T1;" + cell + ";100;5;x");
        assertThat(read.complaints).isEmpty();
        assertThat(read.rows).singleElement().asString().contains("takenAt=" + reading);
    }

    @Test
    void words_that_mean_empty_names_and_blanks_as_above() throws IOException {
        Collected read =
                read("plain", "dmy", "T 118;01.02.2026;n/a;5 h;x", ";02.02.2026;unknown;6;x", "T9;02.02.2026;77;-;x");
        assertThat(read.complaints).isEmpty();
        assertThat(read.rows.stream().map(Object::toString))
                .satisfiesExactly(
                        row -> assertThat(row).contains("truck=T118", "odometerKm=null", "engineHours=5.0"),
                        row -> assertThat(row).contains("truck=T118", "odometerKm=null", "engineHours=6.0"),
                        row -> assertThat(row).contains("truck=T9", "odometerKm=77.0", "engineHours=null"));
    }

    @Test
    void what_has_no_reading_is_refused_with_its_own_cell() throws IOException {
        Collected read = read("1.234,5", "dmy", "T1;01.02.2026;4x8;5;x");
        assertThat(read.complaints)
                .containsExactly(
                        "odo.csv, line 3, odometer_km \"4x8\": is not a number. Fix: write digits with a dot for decimals"
                                + " and nothing else.");
    }

    /** Nobody said which: 533.290 beside 533.120,5 may be either. */
    @Test
    void without_a_match_numbers_in_doubt_are_refused_and_an_answer_settles_the_file() throws IOException {
        Path file = folder.resolve("readings.csv");
        Files.writeString(
                file, "truck;taken_at;odometer_km\nT1;2026-01-01T00:00Z;533.290\nT1;2026-01-02T00:00Z;533.120,5\n");
        Collected asked = read(file, ReadSettings.standard(truck -> ZoneOffset.UTC));
        assertThat(asked.complaints)
                .singleElement()
                .asString()
                .contains("\"533.290\": can be read in two ways, 533290 or 533.290");
        Collected answered =
                read(file, ReadSettings.standard(truck -> ZoneOffset.UTC).withNumbers(NumberForm.COMMA));
        assertThat(answered.rows.stream().map(Object::toString).toList().toString())
                .contains("odometerKm=533290.0", "odometerKm=533120.5");
    }

    @Test
    void the_heading_row_is_found_below_titles() throws IOException {
        Path file = folder.resolve("readings.csv");
        Files.writeString(file, "Fuel stops\nprinted 1/2/2026\n\ntruck,taken_at,odometer_km\nT1,2026-01-01T00:00Z,5\n");
        Collected read = read(file, ReadSettings.standard(truck -> ZoneOffset.UTC));
        assertThat(read.rows).hasSize(1);
        assertThat(read.remarks).contains("readings.csv: 2 rows above the headings were left out.");
    }

    @Test
    void a_match_is_written_and_read_back_the_same() {
        FileMatch match = MatchText.parse(Path.of("odo.csv.match.yaml"), MATCH.formatted("1.234,5", "dmy"));
        assertThat(MatchText.parse(Path.of("x"), MatchFile.text(match, java.util.Map.of())))
                .isEqualTo(match);
        assertThat(match.open()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "odometer_km|odometre_km|column \"KM\": \"odometre_km\" is not a column of readings. Fix: did you mean odometer_km?",
                "table: readings|table: lorries|table \"lorries\" is not known. Fix: write one of",
                "numbers:|numberz:|\"numberz\" is not part of a match. Fix: remove it",
                "columns:|columns: [|cannot be read as YAML"
            })
    void a_mistake_in_it_is_said_with_its_fix(String right, String wrong, String said) {
        String text = MATCH.formatted("plain", "dmy").replace(right, wrong);
        Assertions.assertThatThrownBy(() -> MatchText.parse(Path.of("odo.csv.match.yaml"), text))
                .isInstanceOf(FileRefusedException.class)
                .hasMessageContaining(said);
    }

    private static String quoted(String cell) {
        return cell.contains(";") ? '"' + cell + '"' : cell;
    }

    private Collected read(String form, String order, String... rows) throws IOException {
        Path file = folder.resolve("odo.csv");
        Files.writeString(file, "Odometers\nUnit;Date;KM;Hrs;Card\n" + String.join("\n", rows) + "\n");
        FileMatch match = MatchText.parse(Path.of("odo.csv.match.yaml"), MATCH.formatted(form, order));
        return read(file, ReadSettings.standard(truck -> ZoneOffset.UTC).withMatches(List.of(match)));
    }

    private static Collected read(Path file, ReadSettings settings) {
        Collected collected = new Collected();
        TableReader.read(file, settings, collected);
        return collected;
    }

    private static final class Collected implements RowReceiver {
        private final List<Object> rows = new ArrayList<>();
        private final List<String> complaints = new ArrayList<>();
        private final List<String> remarks = new ArrayList<>();

        @Override
        public <R> void row(Table<R> table, RowPlace place, R row) {
            rows.add(row);
        }

        @Override
        public void refused(Table<?> table, RowPlace place, List<Complaint> refused) {
            refused.forEach(each -> complaints.add(each.toString()));
        }

        @Override
        public void remark(dev.injectorplanner.imports.Remark remark) {
            remarks.add(remark.toString());
        }
    }
}
