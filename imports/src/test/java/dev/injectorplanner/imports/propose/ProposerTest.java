package dev.injectorplanner.imports.propose;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.match.MatchText;
import dev.injectorplanner.imports.propose.Proposer.Said;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a proposal takes for sure, and what it asks. */
class ProposerTest {
    @TempDir
    private Path folder;

    @Test
    void aFamilyThatIsOnlyLikeAKnownOneIsAsked() throws IOException {
        FileMatch match = propose(
                "trucks.csv",
                "Truck,VIN,Depot,Engine\nT1,ZZ908TRK000000001,N,V8\n",
                new KnownNames(Map.of("family", List.of("Example V8", "Example I6"), "depot", List.of("N"))));
        assertThat(match.open()).contains("value \"V8\" of column \"Engine\"");
    }

    @Test
    void blankTrucksAreAskedEvenOnTheCommandLine() throws IOException {
        FileMatch match = propose(
                "readings.csv", "Unit,Date,Odometer (km)\nT1,2026-03-01,1000\n,2026-03-02,1100\n", KnownNames.NONE);
        assertThat(match.open()).contains("blank cells of column \"Unit\"");
        String text = MatchFile.text(match, Map.of());
        assertThat(text).contains("blank: \"ask\"");
        assertThat(MatchText.parse(Path.of("x.match.yaml"), text).open()).isEqualTo(match.open());
        FileMatch answered =
                MatchText.parse(Path.of("x.match.yaml"), text.replace("blank: \"ask\"", "blank: \"refuse\""));
        assertThat(answered.open()).isEmpty();
        assertThat(answered.columns()).noneMatch(column -> column.asAbove());
    }

    @Test
    void aColumnFoundByItsValuesOnlyIsAsked() throws IOException {
        FileMatch match = propose(
                "readings.csv",
                "Kennung,Date,Odometer (km)\nT1,2026-03-01,1000\nT2,2026-03-02,1100\n",
                new KnownNames(Map.of("truck", List.of("T1", "T2"))));
        assertThat(match.open()).contains("column \"Kennung\"");
        assertThat(MatchFile.text(match, Map.of())).contains("\"Kennung\": {to: \"truck\", confirm: \"ask\"}");
    }

    @Test
    void twoUnitsInOneColumnAreAsked() throws IOException {
        FileMatch match = propose(
                "readings.csv",
                "Truck,Date,Odometer (mi)\nT1,2026-03-01,\"482,100 km\"\nT2,2026-03-02,299500\n",
                KnownNames.NONE);
        assertThat(match.open()).contains("column \"Odometer (mi)\"");
    }

    @Test
    void numbersOfTwoSystemsInOneColumnAreAsked() throws IOException {
        FileMatch match = propose(
                "readings.csv",
                "Truck;Date;Odometer km\nT1;2026-03-01;533.120,5\nT1;2026-03-02;533.290\n",
                KnownNames.NONE);
        assertThat(match.open()).contains("numbers");
    }

    @Test
    void anotherColumnSaysNothingOfTheNumbersOfThisOne() throws IOException {
        FileMatch match = propose(
                "readings.csv",
                "Truck,Date,Odometer km,Engine hours\nT1,2026-03-01,\"490,254\",812.5\n",
                KnownNames.NONE);
        assertThat(match.open()).contains("numbers");
    }

    @Test
    void theSameColumnMaySayHowItsNumbersAreWritten() throws IOException {
        FileMatch match = propose(
                "readings.csv",
                "Truck,Date,Odometer km\nT1,2026-03-01,\"490,254\"\nT1,2026-03-02,\"490,300.5\"\n",
                KnownNames.NONE);
        assertThat(match.open()).doesNotContain("numbers");
        assertThat(match.numbers()).isEqualTo(NumberForm.POINT);
    }

    @Test
    void cylindersFromZeroAreAskedHoweverTheyAreWritten() throws IOException {
        for (String cells : List.of("Cyl 0;Cyl 3;Cyl 7", "00;03;07")) {
            String[] cell = cells.split(";", -1);
            FileMatch match = propose(
                    "replacements.csv",
                    "Truck,Cylinders,Done on,Serial\nT1," + cell[0] + ",2026-03-01,A\nT1," + cell[1]
                            + ",2026-03-01,B\nT1," + cell[2] + ",2026-03-01,C\n",
                    KnownNames.NONE);
            assertThat(match.open()).as(cells).contains("value \"0\" of column \"Cylinders\"");
        }
    }

    @Test
    void datesThatProveTheirOrderAreNotAsked() throws IOException {
        FileMatch match = propose(
                "readings.csv", "Truck,Date,Odometer km\nT1,03/04/2026,100\nT1,14/04/2026,200\n", KnownNames.NONE);
        assertThat(match.dates()).isEqualTo(DateOrder.DAY_FIRST);
        DateEvidence both = new DateEvidence();
        ColumnSample sample = new ColumnSample("Date");
        List.of("03/04/2026", "14/04/2026", "04/14/2026").forEach(sample::add);
        both.add(sample);
        assertThat(both.sure()).isFalse();
    }

    @Test
    void numbersHeldByASpreadsheetAreNoEvidenceForTexts() {
        ColumnSample sample = new ColumnSample("Odometer");
        List.of("490,254", "12.5").forEach(sample::add);
        NumberEvidence workbook = new NumberEvidence();
        workbook.add(sample, true);
        assertThat(workbook.sure()).isFalse();
        NumberEvidence text = new NumberEvidence();
        text.add(sample, false);
        assertThat(text.sure()).isTrue();
    }

    @Test
    void hoursBehindTheirNumbersAreEngineHoursNotAnOdometer() throws IOException {
        FileMatch match = propose(
                "readings.csv",
                "Unit,Date,Meter\nT1,2026-03-01,\"12,345 h\"\nT1,2026-03-02,\"12,350.5 h\"\n",
                KnownNames.NONE);
        assertThat(match.columns().get(2).column()).isEqualTo("engine_hours");
        assertThat(match.ignored()).contains("h");
        assertThat(match.open()).containsExactly("column \"Meter\"");
        for (String heading : List.of("Meter (hrs)", "Engine hrs", "Hour meter", "Hrs", "Reading in hours")) {
            FileMatch named =
                    propose("readings.csv", "Unit,Date," + heading + "\nT1,2026-03-01,12345 h\n", KnownNames.NONE);
            assertThat(named.columns().get(2).column()).as(heading).isEqualTo("engine_hours");
        }
    }

    private FileMatch propose(String name, String text, KnownNames known) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text);
        return new Proposer(known).propose(file, Said.NOTHING).match();
    }
}
