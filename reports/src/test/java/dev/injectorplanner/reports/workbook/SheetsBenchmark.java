package dev.injectorplanner.reports.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A sheet of 100,000 rows and 12 columns beside the same rows by a writer library that is made for speed (fastexcel), each with
 * formats, column widths, filter and a head that stays in sight. {@code mvn -pl reports -am -Pbenchmark test -Dtests.heap=256m}.
 */
@Tag("benchmark")
class SheetsBenchmark {
    private static final int ROWS = Integer.getInteger("sheets.rows", 100_000);
    private static final int ROUNDS = Integer.getInteger("sheets.rounds", 7);
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final List<SheetColumn> COLUMNS = List.of(
            SheetColumn.of("Truck", Format.TEXT, 10),
            SheetColumn.of("Depot", Format.TEXT, 12),
            SheetColumn.of("Cylinder", Format.WHOLE, 9),
            SheetColumn.of("Serial", Format.TEXT, 16),
            SheetColumn.of("Part", Format.TEXT, 14),
            SheetColumn.of("Fitted", Format.DATE, 12),
            SheetColumn.of("Age, km", Format.WHOLE, 12),
            SheetColumn.of("Age, hours", Format.ONE_DECIMAL, 12),
            SheetColumn.of("Chance of failing, %", Format.ONE_DECIMAL, 12),
            SheetColumn.summed("Cost of deferring", Format.TWO_DECIMALS, 12),
            SheetColumn.of("Week", Format.DATE, 12),
            SheetColumn.of("Note", Format.TEXT, 24));

    @FunctionalInterface
    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    /** Counts what it is given. */
    private static final class Counting extends OutputStream {
        private long bytes;

        @Override
        public void write(int one) {
            bytes++;
        }

        @Override
        public void write(byte[] buffer, int from, int length) {
            bytes += length;
        }
    }

    private static Object[] row(int i) {
        return new Object[] {
            "T" + i / 8,
            "Depot " + i / 2_000,
            1 + i % 8,
            "SN" + (10_000_000 + i * 37L % 9_999_991),
            i % 3 == 0 ? "INJ-2201-R" : "INJ-2201",
            DAY.minusDays(i % 1_500),
            (double) (i * 131L % 400_000),
            i * 17 % 9_000 / 1.0,
            i % 1_000 / 10.0,
            i % 70_000 / 7.0,
            DAY.plusWeeks(i % 26),
            i % 4 == 0 ? "test before fitting & confirm" : ""
        };
    }

    private static void ours(OutputStream out) throws IOException {
        try (Book book = new Book("Benchmark")) {
            TableSheet sheet = book.table("Rows", "Rows of a large fleet", "made up", COLUMNS);
            for (int i = 0; i < ROWS; i++) {
                sheet.row(row(i));
            }
            sheet.finish();
            book.write(out);
        }
    }

    private static void formatted(OutputStream out) throws IOException {
        reference(out, true);
    }

    /** Values and formats of dates alone: the least that the library can do. */
    private static void plain(OutputStream out) throws IOException {
        reference(out, false);
    }

    private static void reference(OutputStream out, boolean formats) throws IOException {
        try (Workbook book = new Workbook(out, "Benchmark", "1.0")) {
            Worksheet sheet = book.newWorksheet("Rows");
            sheet.value(0, 0, "Rows of a large fleet");
            sheet.value(1, 0, "made up");
            for (int c = 0; c < COLUMNS.size(); c++) {
                sheet.width(c, COLUMNS.get(c).width());
                sheet.value(3, c, COLUMNS.get(c).title());
            }
            sheet.range(3, 0, 3, COLUMNS.size() - 1).style().bold().set();
            for (int i = 0; i < ROWS; i++) {
                Object[] values = row(i);
                for (int c = 0; c < values.length; c++) {
                    put(sheet, 4 + i, c, values[c], formats);
                }
                if (i % 1_000 == 999) {
                    sheet.flush();
                }
            }
            sheet.setAutoFilter(3, 0, 3 + ROWS, COLUMNS.size() - 1);
            sheet.freezePane(0, 4);
            sheet.finish();
        }
    }

    private static void put(Worksheet sheet, int row, int column, Object value, boolean formats) {
        String format = "@";
        if (value instanceof LocalDate day) {
            sheet.value(row, column, day);
            format = "yyyy-mm-dd";
        } else if (value instanceof Number number) {
            sheet.value(row, column, number);
            format = COLUMNS.get(column).format() == Format.WHOLE ? "#,##0" : "#,##0.00";
        } else {
            sheet.inlineString(row, column, value.toString());
        }
        if (formats) {
            sheet.style(row, column).format(format).borderStyle("hair").set();
        } else if (value instanceof LocalDate) {
            sheet.style(row, column).format(format).set();
        }
    }

    @Test
    void aLongSheetBesideAFastWriter() throws IOException {
        once(SheetsBenchmark::formatted); // compiles each
        once(SheetsBenchmark::plain);
        once(SheetsBenchmark::ours);
        print("with the same formats", SheetsBenchmark::formatted);
        print("with formats of dates alone", SheetsBenchmark::plain);
    }

    /** In turns, so that both have the machine as it is. */
    private static void print(String what, Writing reference) throws IOException {
        double[] ours = new double[ROUNDS];
        double[] theirs = new double[ROUNDS];
        double[] ratios = new double[ROUNDS];
        long peak = 0;
        long size = 0;
        for (int round = 0; round < ROUNDS; round++) {
            theirs[round] = once(reference).seconds();
            Once once = once(SheetsBenchmark::ours);
            ours[round] = once.seconds();
            ratios[round] = ours[round] / theirs[round];
            peak = Math.max(peak, once.heap());
            size = once.bytes();
        }
        System.out.printf(
                Locale.ROOT,
                "| sheet, beside a fast writer %s | %,d rows x %d, %,d KB | %.2f s of CPU | %.2f (%s) | heap at most %d of %d MiB, load %.1f |%n",
                what,
                ROWS,
                COLUMNS.size(),
                size >> 10,
                median(ours),
                median(ratios),
                String.join(
                        " ",
                        IntStream.range(0, ROUNDS)
                                .mapToObj(i -> String.format(Locale.ROOT, "%.2f", ratios[i]))
                                .toList()),
                peak >> 20,
                Runtime.getRuntime().maxMemory() >> 20,
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        assertThat(size).isPositive();
    }

    private record Once(double seconds, long heap, long bytes) {}

    /** Seconds of this thread's processor: others use the machine as well. */
    private static Once once(Writing writing) throws IOException {
        System.gc();
        heaps().forEach(MemoryPoolMXBean::resetPeakUsage);
        Counting out = new Counting();
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        writing.to(out);
        double seconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e9;
        long peak = heaps().stream()
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(MemoryUsage::getUsed)
                .sum();
        return new Once(seconds, peak, out.bytes);
    }

    private static List<MemoryPoolMXBean> heaps() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
