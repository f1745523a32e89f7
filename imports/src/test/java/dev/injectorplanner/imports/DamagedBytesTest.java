package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** However the bytes of a file are damaged: it is read, or refused in words, and the words name file and fix. */
class DamagedBytesTest {
    private static final long SEED = 4180;

    @TempDir
    Path folder;

    @Test
    void damagedTextFiles() throws IOException {
        StringBuilder text = new StringBuilder("truck,taken_at,odometer_km,engine_hours\n");
        for (int i = 0; i < 8; i++) {
            text.append("\"T \u00C4")
                    .append(i)
                    .append("\",2026-04-0")
                    .append(i + 1)
                    .append(" 08:00,12 500.5,\n");
        }
        byte[] whole = text.toString().getBytes(StandardCharsets.UTF_8);
        int read = 0;
        for (long seed = SEED; seed < SEED + 600; seed++) {
            read += isReadOrRefusedInWords(damaged(whole, new Random(seed)), "readings.csv", seed) ? 1 : 0;
        }
        assertThat(read).isBetween(40, 560);
    }

    @Test
    void damagedWorkbooks() throws IOException {
        byte[] whole = Files.readAllBytes(Workbooks.write(folder.resolve("whole.xlsx"), Workbooks::readings));
        for (long seed = SEED; seed < SEED + 120; seed++) {
            isReadOrRefusedInWords(damaged(whole, new Random(seed)), "readings.xlsx", seed);
        }
    }

    @Test
    void damagedXmlInsideWorkbooks() throws IOException {
        Path good = Workbooks.write(folder.resolve("good.xlsx"), Workbooks::readings);
        String[] parts = {"xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "xl/styles.xml", "xl/workbook.xml"};
        for (long seed = SEED; seed < SEED + 100; seed++) {
            Random random = new Random(seed);
            Path copy = folder.resolve("readings.xlsx");
            Files.write(copy, Files.readAllBytes(good));
            Workbooks.change(
                    copy,
                    parts[random.nextInt(parts.length)],
                    xml -> new String(
                            damaged(xml.getBytes(StandardCharsets.ISO_8859_1), random), StandardCharsets.ISO_8859_1));
            isReadOrRefusedInWords(Files.readAllBytes(copy), "readings.xlsx", seed);
        }
    }

    private static byte[] damaged(byte[] whole, Random random) {
        byte[] bytes = whole.clone();
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(4)) {
                case 0 -> bytes[at] = (byte) random.nextInt(256);
                case 1 -> bytes[at] = (byte) ",;\"\n\t<>&0".charAt(random.nextInt(9));
                case 2 -> bytes = Arrays.copyOf(bytes, Math.max(1, at));
                default -> {
                    int to = random.nextInt(bytes.length);
                    int length = Math.min(random.nextInt(20), bytes.length - Math.max(at, to));
                    System.arraycopy(bytes, at, bytes, to, length);
                }
            }
        }
        return bytes;
    }

    private boolean isReadOrRefusedInWords(byte[] bytes, String name, long seed) throws IOException {
        Path file = folder.resolve(name);
        Files.write(file, bytes);
        Collected read = new Collected();
        try {
            TableReader.read(file, Collected.usual(), read);
        } catch (FileRefusedException refused) {
            assertThat(refused.getMessage())
                    .as("seed %d", seed)
                    .startsWith(name + ": ")
                    .contains(" Fix: ");
            assertThat(read.rows).as("seed %d", seed).isEmpty();
            return false;
        }
        for (String complaint : read.complaints()) {
            assertThat(complaint).as("seed %d", seed).startsWith(name + ", ").contains(" Fix: ");
        }
        return true;
    }
}
