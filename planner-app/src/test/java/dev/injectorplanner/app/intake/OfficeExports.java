package dev.injectorplanner.app.intake;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Exports as offices have them, made up from a seed: 18 trucks of two depots, miles, US number forms as text, title rows and
 * merged cells, words for nothing, work orders with cylinders in words, faults as scan tools print them.
 */
public final class OfficeExports {
    private static final int TRUCKS = 18;
    private static final int V8 = 12;
    private static final LocalDate FIRST = LocalDate.of(2024, 1, 5);

    private final Random random = new Random(2020);
    private final Path folder;
    private final LocalDate until;

    private boolean formulas;

    private OfficeExports(Path folder, LocalDate until) {
        this.folder = folder;
        this.until = until;
    }

    /** @return files of trucks, odometers, work orders and faults, in the order in which a person may load them */
    public static List<Path> write(Path folder, LocalDate until) throws IOException {
        Files.createDirectories(folder);
        OfficeExports exports = new OfficeExports(folder, until);
        return List.of(exports.vehicles(), exports.odometers(), exports.jobs(), exports.faults());
    }

    /** The odometers with a formula in each truck's last row, as a program writes it: nothing has calculated it yet. */
    public static Path odometersWithFormulas(Path folder, LocalDate until) throws IOException {
        Files.createDirectories(folder);
        OfficeExports exports = new OfficeExports(folder, until);
        exports.formulas = true;
        return exports.odometers();
    }

    private static String unit(int truck) {
        return String.valueOf(4100 + truck);
    }

    private static String us(LocalDate day) {
        return day.getMonthValue() + "/" + day.getDayOfMonth() + "/" + day.getYear();
    }

    private Path vehicles() throws IOException {
        StringBuilder rows = new StringBuilder("Alder Freight - vehicle list\nprinted " + us(until)
                + "\n\nUnit #,VIN,Home Terminal,Engine,In Service,Remark\n");
        for (int i = 0; i < TRUCKS; i++) {
            rows.append(String.join(
                            ",",
                            unit(i),
                            i % 5 == 0 ? "" : "unknown",
                            i % 2 == 0 ? "Corley" : "Ashby",
                            i < V8 ? "V8 6.6" : "I6 9.0",
                            us(LocalDate.of(2015 + i % 6, 1 + i % 12, 13 + i % 15)),
                            "-"))
                    .append('\n');
        }
        return Files.writeString(folder.resolve("vehicle list.csv"), rows);
    }

    private Path odometers() throws IOException {
        Path file = folder.resolve("odometers.xlsx");
        LocalDate friday = until.with(TemporalAdjusters.previousOrSame(DayOfWeek.FRIDAY));
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            Sheet sheet = book.createSheet("Fuel stops");
            sheet.createRow(0).createCell(0).setCellValue("Fuel stops, all terminals");
            sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 4));
            row(sheet, 2, "Unit #", "Date", "Time", "Odometer (mi)", "Engine Hrs", "Card");
            int at = 3;
            for (int i = 0; i < TRUCKS; i++) {
                for (int week = 60; week >= 0; week--) {
                    LocalDate day = friday.minusWeeks(week);
                    long since = ChronoUnit.WEEKS.between(FIRST, day);
                    int noise = Math.floorMod(31 * Objects.hash(i, day.toEpochDay()), 200);
                    long miles = 40_000 + i * 22_000L + since * (1_400 + i * 40) + noise;
                    row(
                            sheet,
                            at++,
                            unit(i),
                            us(day),
                            "07:" + (10 + noise % 50),
                            String.format(Locale.ROOT, "%,d", miles),
                            since % 9 == 0 ? "n/a" : String.format(Locale.ROOT, "%,.1f", miles / 38.2),
                            "X" + random.nextInt(999));
                    if (formulas && week == 0) {
                        Cell cell = sheet.getRow(at - 1).getCell(3);
                        cell.setBlank();
                        cell.setCellFormula("D" + (at - 1) + "+1400");
                    }
                }
            }
            book.write(out);
        }
        return file;
    }

    private static void row(Sheet sheet, int at, String... cells) {
        Row row = sheet.createRow(at);
        for (int i = 0; i < cells.length; i++) {
            row.createCell(i).setCellValue(cells[i]);
        }
    }

    private Path jobs() throws IOException {
        String[] eight = {"3", "1-4", "all", "left bank", "5, 7"};
        String[] six = {"3", "1-3", "all", "6"};
        String[] why = {"broke down", "wear", "PM", "-"};
        Random random = new Random(2021); // the same jobs in each month's file
        StringBuilder rows = new StringBuilder("Unit;WO Date;Cyl;Miles;P/N;New/Reman;Why\n");
        for (int i = 0; i < TRUCKS; i++) {
            for (int year = 2022; year < 2022 + 1 + i % 3; year++) {
                rows.append(String.format(
                        Locale.ROOT,
                        "%s;%s;%s;%,d;-;%s;%s%n",
                        unit(i),
                        us(LocalDate.of(year, 1 + i % 12, 13 + random.nextInt(15))),
                        i < V8 ? eight[random.nextInt(5)] : six[random.nextInt(4)],
                        60_000 + (year - 2022) * 30_000 + i * 900,
                        random.nextBoolean() ? "R" : "N",
                        why[random.nextInt(4)]));
            }
        }
        return Files.writeString(folder.resolve("injector jobs.csv"), rows);
    }

    private Path faults() throws IOException {
        String[] codes = {
            "SPN 653 FMI 5", "651/7", "P0275-00", "P0269 Cyl 3 Contribution", "cyl 3 contribution", "SPN 651 FMI 7 OC 3"
        };
        StringBuilder rows = new StringBuilder("Vehicle,Event Time,DTC,Mileage\n");
        for (int i = 0; i < 60; i++) {
            rows.append(String.join(
                            ",",
                            unit(random.nextInt(TRUCKS)),
                            us(until.minusDays(random.nextInt(28))) + " " + (1 + random.nextInt(12)) + ":"
                                    + (10 + i % 50) + " PM",
                            codes[random.nextInt(codes.length)],
                            "unknown"))
                    .append('\n');
        }
        return Files.writeString(folder.resolve("dtc export.csv"), rows);
    }
}
