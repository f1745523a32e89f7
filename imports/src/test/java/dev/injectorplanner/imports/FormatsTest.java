package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Old workbooks, OpenDocument, and the open telematics standards, as the same readings. */
class FormatsTest {
    @TempDir
    private Path folder;

    @Test
    void anOldWorkbookIsReadWithItsDatesNumbersAndFormulas() throws IOException {
        Path file = folder.resolve("readings.xls");
        try (HSSFWorkbook book = new HSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            Sheet sheet = book.createSheet("readings");
            Row head = sheet.createRow(0);
            String[] headings = {"truck", "taken_at", "odometer_km", "engine_hours", "meter_replaced"};
            for (int i = 0; i < headings.length; i++) {
                head.createCell(i).setCellValue(headings[i]);
            }
            CellStyle day = book.createCellStyle();
            day.setDataFormat(book.createDataFormat().getFormat("dd.mm.yyyy hh:mm"));
            Row row = sheet.createRow(1);
            row.createCell(0).setCellValue("T1");
            row.createCell(1).setCellValue(LocalDateTime.of(2026, 3, 4, 6, 30));
            row.getCell(1).setCellStyle(day);
            row.createCell(2).setCellFormula("400000+90254.5");
            row.createCell(3).setCellValue(428.125);
            row.createCell(4).setCellValue(true);
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            book.write(out);
        }
        Collected read = Collected.of(file);
        assertThat(read.complaints()).isEmpty();
        assertThat(read.rows)
                .singleElement()
                .asString()
                .contains(
                        "takenAt=2026-03-04T12:30:00Z",
                        "odometerKm=490254.5",
                        "engineHours=428.125",
                        "meterReplaced=true");
    }

    @Test
    void anOpenDocumentSheetIsReadWithItsRepeatedRowsAndTypes() throws IOException {
        Path file = ods("""
                <table:table table:name="readings"><table:table-row>
                <table:table-cell office:value-type="string"><text:p>truck</text:p></table:table-cell>
                <table:table-cell office:value-type="string"><text:p>taken_at</text:p></table:table-cell>
                <table:table-cell office:value-type="string"><text:p>odometer_km</text:p></table:table-cell></table:table-row>
                <table:table-row><table:table-cell office:value-type="string"><office:annotation><text:p>note</text:p>
                </office:annotation><text:p>T1</text:p></table:table-cell>
                <table:table-cell office:value-type="date" office:date-value="2026-03-04T06:30:00"><text:p>4 Mar</text:p></table:table-cell>
                <table:table-cell office:value-type="float" office:value="490254.5"><text:p>490.254,5</text:p></table:table-cell>
                <table:table-cell table:number-columns-repeated="1000"/></table:table-row>
                <table:table-row table:number-rows-repeated="1048000"><table:table-cell table:number-columns-repeated="1024"/>
                </table:table-row><table:table-row><table:table-cell><text:p>T2</text:p></table:table-cell>
                <table:table-cell><text:p>2026-03-04T06:30Z</text:p></table:table-cell>
                <table:table-cell table:formula="of:=1+1"/></table:table-row></table:table>
                """);
        Collected read = Collected.of(file);
        assertThat(read.rows)
                .singleElement()
                .asString()
                .contains("truck=T1", "takenAt=2026-03-04T12:30:00Z", "490254.5");
        assertThat(read.complaints()).singleElement().asString().contains("holds a formula whose result was not saved");
    }

    @Test
    void aDamagedOpenDocumentFileIsRefusedInOneSentence() throws IOException {
        Path file = ods("<table:table table:name=\"x\"><table:table-row>");
        assertThatThrownBy(() -> Collected.of(file))
                .isInstanceOf(FileRefusedException.class)
                .hasMessageContaining("is an OpenDocument file that is damaged or protected by a password. Fix:");
    }

    /** Field names as programs that use rFMS publish them. */
    @Test
    void vehicleStatusOfRfmsBecomesReadings() throws IOException {
        Path file = folder.resolve("status.json");
        Files.writeString(file, """
                {"vehicleStatusResponse": {"vehicleStatuses": [
                  {"vin": "V1", "triggerType": {"triggerType": "TIMER", "context": "RFMS"},
                   "createdDateTime": "2026-03-04T06:30:00.000Z", "receivedDateTime": "2026-03-04T06:31:00.000Z",
                   "hrTotalVehicleDistance": 490254500, "totalEngineHours": 8120.35},
                  {"vin": "V2", "createdDateTime": "2026-03-04T06:30:00Z"}]}, "moreDataAvailable": false}
                """);
        Collected read = Collected.of(
                file, Collected.usual().withTruckOf(vin -> Map.of("V1", "T1").getOrDefault(vin, vin)));
        assertThat(read.rows)
                .singleElement()
                .asString()
                .contains("truck=T1", "takenAt=2026-03-04T06:30:00Z", "odometerKm=490254.5", "engineHours=8120.35");
        assertThat(read.complaints()).hasSize(1);
    }

    /** Field names as programs that use ISO 15143-3 publish them; the word for miles is from memory. */
    @Test
    void aSnapshotOfIso15143BecomesReadings() throws IOException {
        Path file = folder.resolve("snapshot.xml");
        Files.writeString(file, """
                <?xml version="1.0" encoding="UTF-8"?>
                <Fleet version="1" snapshotTime="2026-03-04T07:00:00Z" xmlns="http://standards.iso.org/iso/15143/-3">
                <Equipment><EquipmentHeader><OEMName>X</OEMName><EquipmentID>T1</EquipmentID><PIN>P1</PIN></EquipmentHeader>
                <CumulativeIdleHours datetime="2026-03-04T06:00:00Z"><Hour>9</Hour></CumulativeIdleHours>
                <CumulativeOperatingHours datetime="2026-03-04T06:30:00Z"><Hour>8120.35</Hour></CumulativeOperatingHours>
                <Distance datetime="2026-03-04T06:30:00Z"><OdometerUnits>mile</OdometerUnits><Odometer>1000</Odometer></Distance>
                </Equipment><Equipment><EquipmentHeader><PIN>P2</PIN></EquipmentHeader>
                <Distance datetime="2026-03-04T06:40:00Z"><OdometerUnits>kilometre</OdometerUnits><Odometer>7</Odometer></Distance>
                </Equipment></Fleet>
                """);
        Collected read = Collected.of(
                file, Collected.usual().withTruckOf(vin -> Map.of("P2", "T2").getOrDefault(vin, vin)));
        assertThat(read.complaints()).isEmpty();
        assertThat(read.rows.stream().map(Object::toString))
                .satisfiesExactly(
                        row -> assertThat(row).contains("truck=T1", "odometerKm=1609.344", "engineHours=8120.35"),
                        row -> assertThat(row).contains("truck=T2", "odometerKm=7.0", "engineHours=null"));
    }

    @Test
    void otherXmlIsRefusedWithWhatToDo() throws IOException {
        Path file = Files.writeString(folder.resolve("x.xml"), "<?xml version=\"1.0\"?><a><b/></a>");
        assertThatThrownBy(() -> Collected.of(file))
                .hasMessage(
                        "x.xml: is XML, but no ISO 15143-3 snapshot (Fleet). Fix: save a table as CSV or XLSX and load that.");
    }

    private Path ods(String table) throws IOException {
        Path file = folder.resolve("readings.ods");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry("mimetype"));
            zip.write("application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII));
            zip.closeEntry();
            zip.putNextEntry(new ZipEntry("content.xml"));
            zip.write(("<?xml version=\"1.0\"?><office:document-content"
                            + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                            + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
                            + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"><office:body><office:spreadsheet>"
                            + table + "</office:spreadsheet></office:body></office:document-content>")
                    .getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        return file;
    }
}
