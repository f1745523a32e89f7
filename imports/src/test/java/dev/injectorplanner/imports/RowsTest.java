package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.imports.table.Table;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows that are refused one by one, and rows that are duplicates. */
class RowsTest {
    @TempDir
    Path folder;

    private Collected read(String name, String text) throws IOException {
        return Collected.of(Files.writeString(folder.resolve(name), text));
    }

    @Test
    void allThatIsWrongWithARowIsSaidAtOnce() throws IOException {
        Collected read = read("trucks.csv", """
                truck,vin,depot,family,in_service_on,warranty_until
                T1,WDB9634031L700001,,V8,03/04/2026,soon
                """);

        assertThat(read.rows).isEmpty();
        assertThat(read.refused).hasSize(1);
        assertThat(read.complaints())
                .containsExactly(
                        "trucks.csv, line 2, depot (empty): is empty. Fix: enter it: where it is looked after.",
                        "trucks.csv, line 2, in_service_on \"03/04/2026\": can be read in two ways, 2026-04-03 or"
                                + " 2026-03-04. Fix: write it as yyyy-mm-dd, or end the heading in _dmy or _mdy to"
                                + " say which comes first.",
                        "trucks.csv, line 2, warranty_until \"soon\": is not a date. Fix: write it as yyyy-mm-dd,"
                                + " such as 2026-04-25.");
    }

    @Test
    void whatARecordRefusesIsSaidOfItsColumn() throws IOException {
        Collected read = read("readings.csv", """
                truck,taken_at,odometer_mi
                T1,2026-04-03T08:00Z,9999999
                T1,2026-04-04T08:00Z,
                """);

        assertThat(read.complaints())
                .containsExactly(
                        "readings.csv, line 2, odometer_mi \"9999999\": must be from 0 to 10000000 (in km)."
                                + " Fix: enter a number from 0 to 10000000.",
                        "readings.csv, line 3, odometer_mi (empty): and engine_hours are both empty."
                                + " Fix: enter at least one of them.");
    }

    @Test
    void raggedRowsAreRefusedAndBlankLinesSkipped() throws IOException {
        Collected read = read("readings.csv", """

                truck,taken_at,odometer_km

                T1,2026-04-03T08:00Z,7

                T1,2026-04-04T08:00Z
                ,,
                T1,2026-04-05T08:00Z,1,234
                T1,2026-04-06T08:00Z,8,,
                """);

        assertThat(read.rows).hasSize(2);
        assertThat(read.places).extracting(RowPlace::line).containsExactly(4L, 9L);
        assertThat(read.complaints())
                .containsExactly(
                        "readings.csv, line 6: has 2 cells, the headings are 3."
                                + " Fix: add the missing cells, leaving one empty where there is no value.",
                        "readings.csv, line 8: has 4 cells, the headings are 3."
                                + " Fix: put quotation marks around a cell that holds the separator, or remove the"
                                + " extra cell.");
    }

    @Test
    void lineNumbersCountTheLinesOfQuotedCells() throws IOException {
        Collected read =
                read("away.csv", "truck,from,to,reason\n\nT1,2026-04-03,2026-04-05,\"a\nb\"\nT2,x,2026-04-05,\n");

        assertThat(read.refusedPlaces).extracting(RowPlace::line).containsExactly(3L, 5L);
    }

    @Test
    void spreadsheetErrorsAreRefused() throws IOException {
        assertThat(read("stock.csv", "depot,part,on_hand\nD,#N/A,4\n").complaints())
                .containsExactly("stock.csv, line 2, part \"#N/A\": holds the spreadsheet error #N/A."
                        + " Fix: correct the formula, or enter the value.");
    }

    @Test
    void cellsOfAbsurdLengthAreRefused() throws IOException {
        String digits = "1 234".repeat(40_000);

        assertThat(read("stock.csv", "depot,part,on_hand\nD,P," + digits + "\n").complaints())
                .containsExactly("stock.csv, line 2, on_hand \"" + digits.substring(0, 57) + "...\": has 200000"
                        + " characters, more than a cell may have."
                        + " Fix: shorten it, or check whether a quotation mark is missing.");
    }

    @Test
    void emptyCellsStandForWhatTheTemplateSays() throws IOException {
        Part part = (Part) read("parts.csv", "part,kind,supplier,price,lead_days\nP,seal,S,4.5,7\n")
                .rows
                .get(0);
        assertThat(part.pack()).isEqualTo(1);
        assertThat(part.leadDaysMax()).isEqualTo(7);
        assertThat(part.coreDeposit()).isEqualByComparingTo("0");
        Fault fault = (Fault) read("faults.csv", "truck,seen_at,code\nT,2026-04-03,P0203\n")
                .rows
                .get(0);
        assertThat(fault.count()).isEqualTo(1);
        assertThat(fault.cylinder()).isEqualTo(3);
        for (String family : new String[] {"", "all", "ALL"}) {
            Rule rule = (Rule) read("rules.csv", "family,rule,limit\n" + family + ",age months,96\n")
                    .rows
                    .get(0);
            assertThat(rule.family()).isNull();
        }
    }

    @Test
    void aRowThatStandsTwiceWordForWordComesTwice() throws IOException {
        Collected read = read("readings.csv", """
                truck,taken_at,odometer_km
                T1,2026-04-03T08:00Z,7
                T1,2026-04-03T10:00+02:00,7.0
                """);

        assertThat(read.rows).hasSize(2).containsOnly(read.rows.get(0));
    }

    @Test
    void aKeyThatStandsTwiceWithOtherValuesIsRefusedNamingTheFirst() throws IOException {
        Collected read = read("readings.csv", """
                truck,taken_at,odometer_km
                T1,2026-04-03T08:00Z,7
                T1,2026-04-03T08:00Z,8
                T1,2026-04-03T08:00Z,7
                """);

        assertThat(read.rows).hasSize(2);
        assertThat(read.complaints())
                .containsExactly("readings.csv, line 3, truck, taken_at \"T1, 2026-04-03T08:00:00Z\": is also in line 2"
                        + ", with different values. Fix: keep the correct one.");
    }

    @Test
    void whatTheReceiverThrowsIsNotTakenForABadFile() throws IOException {
        Path text = Files.writeString(folder.resolve("readings.csv"), "truck,taken_at,odometer_km\nT1,2026-04-03,7\n");
        Path book = Workbooks.write(folder.resolve("readings.xlsx"), Workbooks::readings);
        for (RuntimeException failure : List.of(
                new IllegalStateException("the store is closed"),
                new UncheckedIOException(new IOException("disk full")))) {
            for (Path file : List.of(text, book)) {
                Collected failing = new Collected() {
                    @Override
                    public <R> void row(Table<R> table, RowPlace place, R row) {
                        throw failure;
                    }
                };
                assertThatThrownBy(() -> TableReader.read(file, Collected.usual(), failing))
                        .isSameAs(failure);
            }
        }
    }

    @Test
    void fingerprintsTellManyKeysApart() {
        SeenKeys seen = new SeenKeys();
        Random random = new Random(7);
        for (int i = 1; i <= 200_000; i++) {
            assertThat(seen.add("key " + i, "content " + i, i)).isEqualTo(SeenKeys.NEW);
        }
        for (int i = 0; i < 1_000; i++) {
            int at = 1 + random.nextInt(200_000);
            assertThat(seen.add("key " + at, "content " + at, 900_000)).isEqualTo(SeenKeys.REPEATED);
            assertThat(seen.add("key " + at, "other", 900_000)).isEqualTo(at);
        }
    }

    @Test
    void aCheckAfterTheReaderComplainsInTheSameForm() throws IOException {
        RowPlace place = read("readings.csv", "Truck,taken at,odometer_mi\nT9,2026-04-03,7\n")
                .places
                .get(0);

        assertThat(place.complaint("truck", "there is no such truck", "load the trucks first"))
                .hasToString("readings.csv, line 2, truck \"T9\": there is no such truck. Fix: load the trucks first.");
        assertThat(place.complaint(new InvalidValueException("odometer", 11.3, "goes back", "say meter_replaced")))
                .hasToString("readings.csv, line 2, odometer_mi \"7\": goes back. Fix: say meter_replaced.");
        assertThat(place.complaint("engine_hours", "is missing", "enter it"))
                .hasToString("readings.csv, line 2, engine_hours (empty): is missing. Fix: enter it.");
        assertThat(RowPlace.of("the form", 1).complaint("truck", "is missing", "enter it"))
                .hasToString("the form, line 1, truck (empty): is missing. Fix: enter it.");
    }

    /** 1 mile is 1.609344 km exactly (international mile, 1959). */
    @Test
    void limitsOfDistanceMayBeInMiles() throws IOException {
        Collected read =
                read("rules.csv", "family,rule,limit,window_days\nall,distance_mi,150000,\nV8,Distance (mi),100000,\n");
        assertThat(read.complaints()).isEmpty();
        assertThat(read.rows)
                .containsExactly(
                        new Rule(null, RuleKind.DISTANCE_KM, 150_000 * 1.609344, null),
                        new Rule("V8", RuleKind.DISTANCE_KM, 100_000 * 1.609344, null));
    }

    /** The same rule in both units is one rule. */
    @Test
    void kmAndMilesOfOneFamilyAreOneRule() throws IOException {
        Collected read = read("rules.csv", "family,rule,limit\nall,distance_km,200000\nall,distance_mi,150000\n");
        assertThat(read.complaints())
                .extracting(Object::toString)
                .singleElement()
                .satisfies(text -> assertThat(text).contains("is also in line 2, with different values"));
    }
}
