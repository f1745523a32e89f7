package dev.injectorplanner.imports.j1939;

import dev.injectorplanner.imports.j1939.BusEncoder.Frame;
import java.util.ArrayList;
import java.util.List;

/** Everything a decoder hands over, kept. */
public final class Decoded implements BusMessages {
    public final List<FaultMessage> faults = new ArrayList<>();
    public final List<String> meters = new ArrayList<>();
    public final List<String> vins = new ArrayList<>();
    public final J1939Decoder decoder;

    public Decoded(SpnLayout layout) {
        decoder = new J1939Decoder(this, source -> layout);
    }

    public Decoded() {
        this(SpnLayout.VERSION_4);
    }

    public Decoded frames(List<Frame> frames) {
        frames.forEach(frame -> decoder.frame(frame.micros(), frame.id(), true, frame.data(), frame.data().length));
        return this;
    }

    public Decoded frame(String id, String data) {
        byte[] bytes = bytes(data);
        decoder.frame(0, (int) Long.parseLong(id, 16), true, bytes, bytes.length);
        return this;
    }

    public static byte[] bytes(String hex) {
        String[] cells = hex.strip().split(" ");
        byte[] bytes = new byte[cells.length];
        for (int i = 0; i < cells.length; i++) {
            bytes[i] = (byte) Integer.parseInt(cells[i], 16);
        }
        return bytes;
    }

    @Override
    public void faults(FaultMessage message) {
        faults.add(message);
    }

    @Override
    public void distance(long micros, int source, double km, boolean fine) {
        meters.add((fine ? "fine_distance_km " : "distance_km ") + km);
    }

    @Override
    public void engineHours(long micros, int source, double hours) {
        meters.add("engine_hours " + hours);
    }

    @Override
    public void vin(long micros, int source, String vin) {
        vins.add(vin);
    }
}
