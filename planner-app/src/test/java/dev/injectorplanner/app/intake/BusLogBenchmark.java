package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.imports.j1939.BusEncoder;
import dev.injectorplanner.imports.j1939.BusEncoder.Frame;
import dev.injectorplanner.imports.j1939.LogWriter;
import dev.injectorplanner.imports.j1939.TroubleCode;
import dev.injectorplanner.imports.vehicle.LogContents;
import dev.injectorplanner.imports.vehicle.LogListener;
import dev.injectorplanner.imports.vehicle.LogRouting;
import dev.injectorplanner.imports.vehicle.VehicleLog;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Frames a second from file to episodes, one thread, beside what was decoded: {@code mvn -pl planner-app -am -Pbenchmark test
 * -Dtest=BusLogBenchmark -Dsurefire.failIfNoSpecifiedTests=false}.
 */
@Tag("benchmark")
class BusLogBenchmark {
    private static final long START = Instant.parse("2026-03-02T08:00:00Z").getEpochSecond() * 1_000_000;
    private static final int ROUNDS = 5;
    private static final int MINUTES = 60;

    @TempDir
    private Path folder;

    /** A bus at a third of its capacity: 500 frames a second, three ECUs with faults, meters, one in three by transport. */
    private static List<Frame> minute(int minute) {
        Random random = new Random(minute);
        List<Frame> frames = new ArrayList<>();
        for (int second = 0; second < 60; second++) {
            long at = START + (minute * 60L + second) * 1_000_000;
            for (int i = 0; i < 480; i++) {
                byte[] data = new byte[8];
                random.nextBytes(data);
                frames.add(new Frame(at + i * 2_000L, 0x0CF0_0400 | random.nextInt(4) << 16, data));
            }
            for (int source : new int[] {0, 3, 11}) {
                List<TroubleCode> codes = new ArrayList<>();
                for (int code = 0; code < source; code += 3) {
                    codes.add(new TroubleCode(651 + code, 5, 1 + minute / 20, 0));
                }
                frames.addAll(BusEncoder.broadcast(at + 777, 60_000, 65_226, source, BusEncoder.faults(4, 255, codes)));
            }
            int bits = 1_600_000 + minute * 200 + second * 3;
            byte[] km = {0, 0, 0, 0, (byte) bits, (byte) (bits >> 8), (byte) (bits >> 16), (byte) (bits >> 24)};
            frames.add(new Frame(at + 999, 0x18FE_E000, km));
        }
        frames.sort(Comparator.comparingLong(Frame::micros));
        return frames;
    }

    @Test
    void framesASecond() throws IOException {
        Path text = folder.resolve("truck.log");
        List<Frame> all = new ArrayList<>();
        try (OutputStream out = Files.newOutputStream(text)) {
            for (int minute = 0; minute < MINUTES; minute++) {
                List<Frame> frames = minute(minute);
                out.write(LogWriter.candump(frames));
                all.addAll(frames);
            }
        }
        Path capture = Files.write(folder.resolve("truck.pcapng"), LogWriter.capture(all));
        Path table = Files.write(folder.resolve("truck.csv"), LogWriter.csv(all));
        all.clear();
        System.out.printf(
                "%n%12s %10s %8s %12s %9s %9s %8s%n",
                "form", "frames", "MB", "frames/s", "messages", "episodes", "lost");
        for (Path file : List.of(text, table, capture)) {
            measure(file);
        }
    }

    private static void measure(Path file) throws IOException {
        double best = Double.MAX_VALUE;
        LogContents contents = null;
        for (int round = 0; round < ROUNDS; round++) {
            long begun = System.nanoTime();
            contents = VehicleLog.read(file, ZoneOffset.UTC, LogRouting.all("T"), LogListener.SILENT);
            best = Math.min(best, (System.nanoTime() - begun) / 1e9);
        }
        assertThat(contents.tally().damaged()).isZero();
        System.out.printf(
                Locale.ROOT,
                "%12s %,10d %8.1f %,12.0f %,9d %9d %8d%n",
                file.getFileName(),
                contents.tally().frames(),
                Files.size(file) / 1e6,
                contents.tally().frames() / best,
                contents.faultMessages(),
                contents.trucks().get(0).episodes().size(),
                contents.lostMessages());
    }
}
