package dev.injectorplanner.imports;

import dev.injectorplanner.imports.table.Table;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * Large files of readings. Run by hand to measure: {@code java -Xmx3g ... BigFiles write FOLDER ROWS} (the writing of a
 * million different texts into a workbook needs much memory), then {@code java -Xmx512m ... BigFiles read FILE}, each
 * in a process of its own.
 */
final class BigFiles {
    private static final Instant START = Instant.parse("2023-01-02T06:00:00Z");

    private BigFiles() {}

    static Path csv(Path file, int rows) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("truck,taken_at,odometer_km,engine_hours\n");
            for (int i = 0; i < rows; i++) {
                out.write(String.format(
                        Locale.ROOT,
                        "T-%05d,%s,%d.%d,%d%n",
                        i % 1_000,
                        moment(i),
                        1_000 + i / 4,
                        i % 10,
                        20 + i / 200));
            }
        }
        return file;
    }

    /** Dates as real dates, or as texts: a shared text for every row. */
    static Path xlsx(Path file, int rows, boolean realDates) throws IOException {
        try (SXSSFWorkbook workbook = new SXSSFWorkbook(null, 100, true, !realDates);
                OutputStream out = Files.newOutputStream(file)) {
            Sheet sheet = workbook.createSheet("readings");
            CellStyle style = workbook.createCellStyle();
            style.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd hh:mm:ss"));
            Workbooks.row(sheet, 0, "truck", "taken_at", "odometer_km", "engine_hours");
            for (int i = 0; i < rows; i++) {
                Row row = sheet.createRow(i + 1);
                row.createCell(0).setCellValue(String.format("T-%05d", i % 1_000));
                Cell taken = row.createCell(1);
                if (realDates) {
                    taken.setCellValue(LocalDateTime.ofInstant(moment(i), ZoneOffset.UTC));
                    taken.setCellStyle(style);
                } else {
                    taken.setCellValue(moment(i).toString());
                }
                row.createCell(2).setCellValue(1_000 + i / 4 + i % 10 / 10.0);
                row.createCell(3).setCellValue(20 + i / 200);
            }
            workbook.write(out);
        }
        return file;
    }

    private static Instant moment(int i) {
        return START.plusSeconds(3_600L * (i / 1_000) * 24 + i % 1_000);
    }

    /** Counts and keeps nothing. */
    static class Counting implements RowReceiver {
        long rows;
        long refused;

        @Override
        public <R> void row(Table<R> table, RowPlace place, R row) {
            rows++;
        }

        @Override
        public void refused(Table<?> table, RowPlace place, List<Complaint> complaints) {
            refused++;
        }
    }

    public static void main(String[] arguments) throws IOException {
        if (arguments[0].equals("write")) {
            Path folder = Path.of(arguments[1]);
            int rows = Integer.parseInt(arguments[2]);
            csv(folder.resolve("readings.csv"), rows);
            xlsx(folder.resolve("readings-dates.xlsx"), rows, true);
            xlsx(folder.resolve("readings-texts.xlsx"), rows, false);
            return;
        }
        long from = System.nanoTime();
        Counting counting = new Counting();
        TableReader.read(Path.of(arguments[1]), Collected.usual(), counting);
        System.out.printf(
                "%s: %,d rows, %,d refused, %.1f s, at most %d MiB of heap%n",
                arguments[1],
                counting.rows,
                counting.refused,
                (System.nanoTime() - from) / 1e9,
                Runtime.getRuntime().maxMemory() >> 20);
    }
}
