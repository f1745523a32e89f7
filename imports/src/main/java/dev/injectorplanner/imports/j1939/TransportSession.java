package dev.injectorplanner.imports.j1939;

import java.util.BitSet;

/** One message of several packets on its way from an address to another, or to all. */
final class TransportSession {
    static final int PACKET = 7;

    private final int pgn;
    private final boolean broadcast;
    private final int packets;
    private final int size;
    private final byte[] data;
    private final BitSet seen = new BitSet();
    private long lastMicros;

    TransportSession(long micros, int pgn, boolean broadcast, int size, int packets) {
        this.lastMicros = micros;
        this.pgn = pgn;
        this.broadcast = broadcast;
        this.size = size;
        this.packets = packets;
        this.data = new byte[packets * PACKET];
    }

    int pgn() {
        return pgn;
    }

    int size() {
        return size;
    }

    byte[] data() {
        return data;
    }

    boolean isLate(long micros, long broadcastMicros, long connectionMicros) {
        return micros - lastMicros > (broadcast ? broadcastMicros : connectionMicros);
    }

    void heard(long micros) {
        lastMicros = micros;
    }

    /**
     * Takes a packet. Those of a broadcast must come in their order, each once; in a connection the receiver may ask for some
     * again.
     *
     * @return whether the message can still become whole
     */
    boolean take(long micros, byte[] frame, int length) {
        int number = length < 1 ? 0 : frame[0] & 0xFF;
        int needed = Math.min(PACKET, size - (number - 1) * PACKET);
        boolean fits = number >= 1 && number <= packets && length - 1 >= needed;
        if (!fits || broadcast && number != seen.cardinality() + 1) {
            return false;
        }
        System.arraycopy(frame, 1, data, (number - 1) * PACKET, Math.min(PACKET, length - 1));
        seen.set(number);
        lastMicros = micros;
        return true;
    }

    boolean isWhole() {
        return seen.cardinality() == packets;
    }
}
