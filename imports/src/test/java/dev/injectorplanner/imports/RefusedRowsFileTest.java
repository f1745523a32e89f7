package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Refused rows lie beside the file, can be corrected there, and be loaded from there. */
class RefusedRowsFileTest {
    @TempDir
    Path folder;

    private Collected load(Path file) {
        Collected read = Collected.of(file);
        try (RefusedRowsFile refused = RefusedRowsFile.beside(file)) {
            for (int i = 0; i < read.refused.size(); i++) {
                refused.add(read.refusedPlaces.get(i), read.refused.get(i));
            }
        }
        return read;
    }

    @Test
    void saysWhatIsWrongBeforeTheOriginalCells() throws IOException {
        Path file = Files.writeString(folder.resolve("away.csv"), """
                Truck;from;to;reason;driver
                T1;2026-04-03;2026-04-05;"fair; in ""town""\";Ann
                T2;03/04/2026;soon;"fair; in ""town""\";Bob
                T3;2026-04-03;2026-04-05
                """);

        load(file);

        Path refused = folder.resolve("away.refused.csv");
        assertThat(Files.readString(refused))
                .isEqualTo("\uFEFFrefused_line;refused_column;refused_value;refused_reason;"
                        + "refused_fix;Truck;from;to;reason;driver\r\n"
                        + "3;\"from; to\";\"03/04/2026; soon\";\"can be read in two ways, 2026-04-03 or 2026-03-04; is not a"
                        + " date\";\"write it as yyyy-mm-dd, or end the heading in _dmy or _mdy to say which comes first; write"
                        + " it as yyyy-mm-dd, such as 2026-04-25\";T2;03/04/2026;soon;\"fair; in \"\"town\"\"\";Bob\r\n"
                        + "4;;;has 3 cells, the headings are 5;add the missing cells, leaving one empty where there is no value;T3;"
                        + "2026-04-03;2026-04-05;;\r\n");
    }

    @Test
    void canBeCorrectedAndLoadedAsItIs() throws IOException {
        Path file = Files.writeString(
                folder.resolve("cylinder_tests.csv"),
                "truck,cylinder,tested_at,test,value,unit\nT1,1,2026-04-03,balance,x,mm3/stroke\n"
                        + "T1,2,2026-04-03,leak,1.5,mm3/stroke\n");
        assertThat(load(file).refused).hasSize(2);

        Path refused = folder.resolve("cylinder_tests.refused.csv");
        Files.writeString(refused, Files.readString(refused).replace("balance,x,", "balance,-2.5,"));
        Collected again = load(refused);

        assertThat(again.remarks).isEmpty();
        assertThat(again.rows).hasSize(1);
        assertThat(again.refused).hasSize(1);
        Path twice = folder.resolve("cylinder_tests.refused.refused.csv");
        assertThat(Files.readAllLines(twice).get(0))
                .isEqualTo("\uFEFFrefused_line,refused_column,refused_value,refused_reason,refused_fix,"
                        + "truck,cylinder,tested_at,test,value,unit");
        assertThat(Files.readAllLines(twice).get(1)).startsWith("3,test,leak,is not a known name,");
    }

    @Test
    void isNotThereWhereNothingIsRefusedAndAnOldOneGoes() throws IOException {
        Path file = Files.writeString(folder.resolve("away.csv"), "truck,from,to\nT1,x,2026-04-05\n");
        Path other = Files.writeString(folder.resolve("away.2025.refused.csv"), "of another file");
        load(file);
        assertThat(folder.resolve("away.refused.csv")).exists();

        Files.writeString(file, "truck,from,to\nT1,2026-04-03,2026-04-05\n");
        load(file);

        assertThat(folder.resolve("away.refused.csv")).doesNotExist();
        assertThat(other).exists();
    }

    @Test
    void eachSheetHasItsOwn() throws IOException {
        Path file = Workbooks.write(folder.resolve("fleet.xlsx"), workbook -> {
            Sheet readings = workbook.createSheet("Readings");
            Workbooks.row(readings, 0, "truck", "taken_at", "odometer_km");
            Workbooks.row(readings, 1, "T1", LocalDateTime.of(2026, 4, 3, 8, 0), "many");
            Sheet stock = workbook.createSheet("Stock/2".replace('/', ' '));
            Workbooks.row(stock, 0, "depot", "part", "on_hand");
            Workbooks.row(stock, 1, "D", "P", -1);
        });

        load(file);

        assertThat(folder.resolve("fleet.xlsx.Readings.refused.csv")).exists();
        Path stock = folder.resolve("fleet.xlsx.Stock 2.refused.csv");
        assertThat(Files.readAllLines(stock).get(1)).startsWith("2,on_hand,-1,must be from 0 to 10000000,");
        assertThat(load(stock).refused).hasSize(1);
    }
}
