package dev.injectorplanner.imports.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.bus.BusLog;
import dev.injectorplanner.imports.bus.LogTally;
import dev.injectorplanner.imports.j1939.BusEncoder;
import dev.injectorplanner.imports.j1939.BusEncoder.Frame;
import dev.injectorplanner.imports.j1939.LogWriter;
import dev.injectorplanner.imports.j1939.TroubleCode;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Any bytes: no exception, nothing beyond the stated limits. The seed is in each message. */
class AnyBytesTest {
    @TempDir
    private Path folder;

    private LogContents read(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("any.log"), bytes);
        BusLog.isLog(file);
        return VehicleLog.read(file, ZoneOffset.UTC, LogRouting.all("T"), LogListener.SILENT);
    }

    @Test
    void randomBytes() throws IOException {
        int[][] magics = {{}, {0x0A, 0x0D, 0x0D, 0x0A}, {0xD4, 0xC3, 0xB2, 0xA1}, {'(', '1', '.', '0', ')', ' '}};
        for (int seed = 0; seed < 2_000; seed++) {
            Random random = new Random(seed);
            byte[] bytes = new byte[random.nextInt(2_000)];
            random.nextBytes(bytes);
            int[] magic = magics[seed % magics.length];
            for (int i = 0; i < Math.min(bytes.length, magic.length); i++) {
                bytes[i] = (byte) magic[i];
            }
            try {
                assertThat(read(bytes)).as("seed %d", seed).isNotNull();
            } catch (FileRefusedException e) {
                assertThat(e.getMessage()).as("seed %d", seed).contains("Fix: ");
            }
        }
    }

    /** Logs that were right, with bytes changed, cut out or repeated. */
    @Test
    void damagedLogs() throws IOException {
        byte[] text = LogWriter.candump(frames(new Random(1)));
        byte[] capture = LogWriter.capture(frames(new Random(2)));
        for (int seed = 0; seed < 1_000; seed++) {
            Random random = new Random(seed);
            byte[] bytes = (seed % 2 == 0 ? text : capture).clone();
            for (int i = 0; i < 1 + random.nextInt(30); i++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            int from = random.nextInt(bytes.length);
            byte[] cut = java.util.Arrays.copyOfRange(bytes, random.nextInt(4) == 0 ? from : 0, bytes.length);
            try {
                LogContents contents = read(cut);
                assertThat(contents.tally().frames()).as("seed %d", seed).isLessThanOrEqualTo(4_000);
            } catch (FileRefusedException e) {
                assertThat(e.getMessage()).as("seed %d", seed).contains("Fix: ");
            }
        }
    }

    private static List<Frame> frames(Random random) {
        List<Frame> frames = new ArrayList<>();
        long micros = 1_772_000_000_000_000L;
        for (int i = 0; i < 100; i++) {
            List<TroubleCode> codes = new ArrayList<>();
            for (int code = 0; code < random.nextInt(6); code++) {
                codes.add(new TroubleCode(651 + random.nextInt(8), random.nextInt(20), random.nextInt(128), 0));
            }
            frames.addAll(BusEncoder.broadcast(micros, 50_000, 65_226, 0, BusEncoder.faults(4, 255, codes)));
            micros += 1_000_000;
        }
        return frames;
    }

    /** A log that names a new fault with every message, from every address: what is kept stays within its limits. */
    @Test
    void endlessNewFaultsDoNotGrow() {
        EpisodeBook book = new EpisodeBook(new OdometerTrack());
        Random random = new Random(3);
        for (int i = 0; i < 200_000; i++) {
            List<TroubleCode> codes = List.of(new TroubleCode(random.nextInt(500_000), random.nextInt(32), 1, 0));
            book.add(BusEncoder.message(i * 1_000_000L, random.nextInt(254), codes));
        }
        assertThat(book.finish()).hasSize(EpisodeBook.MOST_EPISODES);
        assertThat(book.notKept()).isPositive();
    }

    @Test
    void damagedLinesOfAnEndlessLogAreCountedOnly() throws IOException {
        StringBuilder text = new StringBuilder("(1.0) can0 18FECA00#11\n");
        text.append("(1.0) can0 18FECA00#1\n".repeat(100_000));
        LogTally tally = read(text.toString().getBytes()).tally();
        assertThat(tally.damaged()).isEqualTo(100_000);
        assertThat(tally.examples()).hasSize(5);
    }
}
