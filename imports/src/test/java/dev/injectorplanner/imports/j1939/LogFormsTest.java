package dev.injectorplanner.imports.j1939;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.imports.bus.*;
import dev.injectorplanner.imports.j1939.BusEncoder.Frame;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The forms of a log. Sources: {@code candump -L} and its print for people as the open can-utils write them; pcapng and pcap as
 * the IETF drafts (opsawg) and the list of link types (227 CAN, 113 Linux cooked) have them.
 */
class LogFormsTest {
    private static final Path NAME = Path.of("truck.log");

    @TempDir
    private Path folder;

    private record Read(List<String> frames, LogTally tally) {}

    private static Read read(byte[] log, ZoneId zone) throws IOException {
        List<String> frames = new ArrayList<>();
        LogTally tally = BusLog.read(
                NAME,
                new ByteArrayInputStream(log),
                zone,
                (micros, id, extended, data, length) ->
                        frames.add(line(micros, id, extended, Arrays.copyOf(data, length))));
        return new Read(frames, tally);
    }

    private static Read read(String log) throws IOException {
        return read(log.getBytes(StandardCharsets.US_ASCII), ZoneOffset.UTC);
    }

    private static String line(long micros, int id, boolean extended, byte[] data) {
        return micros + " " + Integer.toHexString(id) + (extended ? "x " : " ") + Arrays.toString(data);
    }

    private static List<Frame> frames(int count) {
        Random random = new Random(7);
        List<Frame> frames = new ArrayList<>();
        long micros = 1_772_000_000_123_456L;
        for (int i = 0; i < count; i++) {
            micros += random.nextInt(2_000_000);
            byte[] data = new byte[1 + random.nextInt(8)];
            random.nextBytes(data);
            frames.add(new Frame(micros, 0x0C00_0000 | random.nextInt(1 << 26), data));
        }
        return frames;
    }

    @Test
    void everyFormHoldsTheSameFrames() throws IOException {
        List<Frame> frames = frames(3_000);
        List<String> wanted = frames.stream()
                .map(frame -> line(frame.micros(), frame.id(), true, frame.data()))
                .toList();
        for (byte[] log : List.of(
                LogWriter.candump(frames),
                LogWriter.printed(frames),
                LogWriter.csv(frames),
                LogWriter.numbered(frames),
                LogWriter.pcapng(frames, ByteOrder.LITTLE_ENDIAN, 227, 6),
                LogWriter.pcapng(frames, ByteOrder.BIG_ENDIAN, 227, 9),
                LogWriter.pcapng(frames, ByteOrder.LITTLE_ENDIAN, 113, 6),
                LogWriter.pcap(frames))) {
            Read read = read(log, ZoneOffset.UTC);
            String form = new String(log, 0, 60, StandardCharsets.ISO_8859_1);
            assertThat(read.frames()).as(form).isEqualTo(wanted);
            assertThat(read.tally().damaged()).as(form).isZero();
            assertThat(read.tally().clock()).isEqualTo(LogClock.UTC);
            Path file = Files.write(folder.resolve("log"), log);
            assertThat(BusLog.isLog(file)).as(form).isTrue();
        }
    }

    @Test
    void elevenBitsRemoteErrorAndFdFrames() throws IOException {
        Read read = read("(1.000000) can0 7E8#0243\n(1.100000) can0 18FECA00#R8\n(1.200000) can0 20000004#0000\n"
                + "(1.300000) can0 18FECA00##1AABBCC\n(1.400000) can0 18FECA00#\n(1.500000) can0 18FECA00#11 R\n");
        assertThat(read.frames())
                .containsExactly(
                        "1000000 7e8 [2, 67]",
                        "1300000 18feca00x [-86, -69, -52]",
                        "1400000 18feca00x []",
                        "1500000 18feca00x [17]");
        assertThat(read.tally().damaged()).isZero();
        assertThat(read.tally().clock()).isEqualTo(LogClock.START_OF_LOG);
    }

    @Test
    void damagedLinesAreCountedAndShown() throws IOException {
        Read read =
                read("(1.0) can0 18FECA00#1122\n(1.1) can0 18FECA00#112\n\n# remark\n(1.2) can0 18FECA0#11\nrubbish\n"
                        + "(1.3) can0 18FECA00#11223344556677889900\n(1.4) can0 18FECA00#33\n");
        assertThat(read.frames()).hasSize(2);
        assertThat(read.tally().damaged()).isEqualTo(4);
        assertThat(read.tally().lines()).isEqualTo(6);
        assertThat(read.tally().examples().get(0))
                .startsWith("line 2 is not a frame")
                .contains("#112\"");
    }

    @Test
    void aLineWithoutEndIsOneDamagedLine() throws IOException {
        String endless = "(1.0) can0 18FECA00#" + "00".repeat(200_000);
        Read read = read("(1.0) can0 18FECA00#11\n" + endless + "\n(2.0) can0 18FECA00#22\n");
        assertThat(read.frames()).hasSize(2);
        assertThat(read.tally().damaged()).isEqualTo(1);
    }

    /** 2 March 2026, 8:00 in Berlin is 7:00 UTC. */
    @Test
    void timesWithoutAnOffsetAreOfTheirZone() throws IOException {
        byte[] log = "2026-03-02 08:00:00.5 18FECA00 2 11 22\n".getBytes(StandardCharsets.US_ASCII);
        Read read = read(log, ZoneId.of("Europe/Berlin"));
        assertThat(read.frames().get(0)).startsWith("1772434800500000 ");
        assertThat(read.tally().clock()).isEqualTo(LogClock.LOCAL);
    }

    @Test
    void aCaptureThatIsCutOffKeepsWhatCameBefore() throws IOException {
        byte[] whole = LogWriter.pcapng(frames(10), ByteOrder.LITTLE_ENDIAN, 227, 6);
        Read read = read(Arrays.copyOf(whole, whole.length - 5), ZoneOffset.UTC);
        assertThat(read.frames()).hasSize(9);
        assertThat(read.tally().damaged()).isEqualTo(1);
        assertThat(read.tally().examples().get(0)).contains("ends within a packet; the rest was not read");
    }

    @Test
    void aCaptureOfSomethingElseIsRefused() {
        byte[] ethernet = LogWriter.pcapng(frames(3), ByteOrder.LITTLE_ENDIAN, 1, 6);
        assertThatThrownBy(() -> read(ethernet, ZoneOffset.UTC))
                .isInstanceOf(FileRefusedException.class)
                .hasMessage(
                        "truck.log: is a capture without a CAN interface (link type 1). Fix: capture the CAN interface"
                                + " itself, or log it with candump -L.");
    }

    @Test
    void tablesAreNoLogs() throws IOException {
        for (Path table : Files.list(Path.of("samples", "templates")).toList()) {
            assertThat(BusLog.isLog(table)).as("%s", table).isFalse();
        }
        for (Path table : Files.list(Path.of("samples", "demo")).toList()) {
            assertThat(BusLog.isLog(table)).as("%s", table).isFalse();
        }
    }
}
