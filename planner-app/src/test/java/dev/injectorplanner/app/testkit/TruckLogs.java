package dev.injectorplanner.app.testkit;

import dev.injectorplanner.imports.j1939.BusEncoder;
import dev.injectorplanner.imports.j1939.BusEncoder.Frame;
import dev.injectorplanner.imports.j1939.LogWriter;
import dev.injectorplanner.imports.j1939.TroubleCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Makes a vehicle's log, message by message. */
public final class TruckLogs {
    private final List<Frame> frames = new ArrayList<>();

    /** A DM1 of one ECU every second. */
    public TruckLogs faults(Instant from, int seconds, int source, TroubleCode... codes) {
        for (int second = 0; second < seconds; second++) {
            frames.addAll(BusEncoder.broadcast(
                    micros(from.plusSeconds(second)),
                    50_000,
                    65_226,
                    source,
                    BusEncoder.faults(4, 255, List.of(codes))));
        }
        return this;
    }

    public TruckLogs odometer(Instant at, double km) {
        long bits = Math.round(km * 200);
        frames.add(new Frame(micros(at), 0x18FEC100, fourBytes(bits)));
        return this;
    }

    public TruckLogs hours(Instant at, double hours) {
        frames.add(new Frame(micros(at), 0x18FEE500, fourBytes(Math.round(hours * 20))));
        return this;
    }

    public TruckLogs vin(Instant at, String vin) {
        byte[] text = (vin + "*").getBytes(StandardCharsets.US_ASCII);
        frames.addAll(BusEncoder.broadcast(micros(at), 50_000, 65_260, 0, text));
        return this;
    }

    private static byte[] fourBytes(long bits) {
        return new byte[] {(byte) bits, (byte) (bits >> 8), (byte) (bits >> 16), (byte) (bits >> 24), -1, -1, -1, -1};
    }

    private static long micros(Instant at) {
        return at.getEpochSecond() * 1_000_000 + at.getNano() / 1_000;
    }

    public Path write(Path file) throws IOException {
        return Files.write(file, LogWriter.candump(frames));
    }

    public String text() {
        return new String(LogWriter.candump(frames), StandardCharsets.US_ASCII);
    }
}
