package dev.injectorplanner.imports.j1939;

import java.util.ArrayList;
import java.util.List;

/** Writes messages as frames, the other way round than the decoder, from the same sources. */
public final class BusEncoder {
    /** One frame. */
    public record Frame(long micros, int id, byte[] data) {}

    private BusEncoder() {}

    /** A fault message; today's layout of SPNs. */
    public static byte[] faults(int lamps, int flashes, List<TroubleCode> codes) {
        byte[] data = new byte[Math.max(8, 2 + 4 * codes.size())];
        java.util.Arrays.fill(data, (byte) 0xFF);
        data[0] = (byte) lamps;
        data[1] = (byte) flashes;
        if (codes.isEmpty()) {
            java.util.Arrays.fill(data, 2, 6, (byte) 0);
        }
        for (int i = 0; i < codes.size(); i++) {
            TroubleCode code = codes.get(i);
            data[2 + 4 * i] = (byte) code.spn();
            data[3 + 4 * i] = (byte) (code.spn() >> 8);
            data[4 + 4 * i] = (byte) (code.spn() >> 16 << 5 | code.fmi());
            data[5 + 4 * i] = (byte) (code.conversionBit() << 7 | code.count());
        }
        return data;
    }

    /** A DM1 as it is decoded. */
    public static FaultMessage message(long micros, int source, List<TroubleCode> codes) {
        byte[] data = faults(0, 0xFF, codes);
        return FaultMessage.of(micros, source, FaultMessage.Kind.ACTIVE, data, data.length, SpnLayout.VERSION_4);
    }

    /** Frames of a message to all, one every {@code apart} microseconds. */
    public static List<Frame> broadcast(long micros, long apart, int pgn, int source, byte[] payload) {
        if (payload.length <= 8) {
            return List.of(new Frame(micros, 6 << 26 | pgn << 8 | source, payload));
        }
        return packets(micros, apart, pgn, source, 0xFF, payload, 32);
    }

    /** Frames of a message to one address, with the receiver's answers. */
    public static List<Frame> connection(long micros, long apart, int pgn, int source, int to, byte[] payload) {
        List<Frame> frames = packets(micros, apart, pgn, source, to, payload, 16);
        int packets = (payload.length + 6) / 7;
        frames.add(1, answer(micros + apart / 2, pgn, to, source, new int[] {17, packets, 1, 0xFF, 0xFF}));
        frames.add(answer(micros + apart * (packets + 1L), pgn, to, source, new int[] {
            19, payload.length & 0xFF, payload.length >> 8, packets, 0xFF
        }));
        return frames;
    }

    /** An abort from one address to another. */
    public static Frame abort(long micros, int pgn, int source, int to) {
        return answer(micros, pgn, source, to, new int[] {255, 3, 0xFF, 0xFF, 0xFF});
    }

    private static Frame answer(long micros, int pgn, int source, int to, int[] first) {
        byte[] data = new byte[8];
        for (int i = 0; i < 5; i++) {
            data[i] = (byte) first[i];
        }
        pgn(data, pgn);
        return new Frame(micros, 0x1CEC0000 | to << 8 | source, data);
    }

    private static void pgn(byte[] data, int pgn) {
        data[5] = (byte) pgn;
        data[6] = (byte) (pgn >> 8);
        data[7] = (byte) (pgn >> 16);
    }

    private static List<Frame> packets(
            long micros, long apart, int pgn, int source, int to, byte[] payload, int control) {
        List<Frame> frames = new ArrayList<>();
        int packets = (payload.length + 6) / 7;
        byte[] head = {
            (byte) control, (byte) payload.length, (byte) (payload.length >> 8), (byte) packets, (byte) 0xFF, 0, 0, 0
        };
        pgn(head, pgn);
        frames.add(new Frame(micros, 0x1CEC0000 | to << 8 | source, head));
        for (int packet = 0; packet < packets; packet++) {
            byte[] data = new byte[8];
            java.util.Arrays.fill(data, (byte) 0xFF);
            data[0] = (byte) (packet + 1);
            System.arraycopy(payload, packet * 7, data, 1, Math.min(7, payload.length - packet * 7));
            frames.add(new Frame(micros + apart * (packet + 1L), 0x1CEB0000 | to << 8 | source, data));
        }
        return frames;
    }
}
