package dev.injectorplanner.imports.j1939;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The transport protocol of SAE J1939-21: messages of 9 to 1785 bytes in packets of 7, broadcast (BAM) or in a connection (RTS,
 * CTS, end of message, abort). One session a pair of addresses; the oldest gives way where there are too many. Time-outs from
 * memory of the standard: T1 750 ms between packets of a broadcast, T2 and T3 1250 ms in a connection.
 */
final class Transport {
    static final int MOST_SESSIONS = 512;

    private static final int REQUEST_TO_SEND = 16;
    private static final int CLEAR_TO_SEND = 17;
    private static final int END_OF_MESSAGE = 19;
    private static final int BROADCAST = 32;
    private static final int ABORT = 255;
    private static final int ALL = 0xFF;
    private static final int LEAST_SIZE = 9;
    private static final int MOST_SIZE = 1_785;
    private static final long BROADCAST_MICROS = 750_000;
    private static final long CONNECTION_MICROS = 1_250_000;

    private final Map<Integer, TransportSession> sessions = new LinkedHashMap<>();
    private final Receiver receiver;
    private long lost;

    /** Takes whole messages. */
    interface Receiver {
        void message(long micros, int pgn, int source, byte[] data, int length);
    }

    Transport(Receiver receiver) {
        this.receiver = receiver;
    }

    long lost() {
        return lost;
    }

    void control(long micros, int source, int destination, byte[] data, int length) {
        if (length < 8) {
            return;
        }
        int pgn = data[5] & 0xFF | (data[6] & 0xFF) << 8 | (data[7] & 0x03) << 16;
        switch (data[0] & 0xFF) {
            case BROADCAST -> {
                if (destination == ALL) {
                    begin(micros, source, destination, pgn, data);
                }
            }
            case REQUEST_TO_SEND -> {
                if (destination != ALL) {
                    begin(micros, source, destination, pgn, data);
                }
            }
            case CLEAR_TO_SEND -> heard(micros, key(destination, source), pgn);
            case ABORT -> {
                drop(key(source, destination), pgn);
                drop(key(destination, source), pgn);
            }
            case END_OF_MESSAGE -> drop(key(destination, source), pgn);
            default -> {} // reserved
        }
    }

    private static int key(int from, int to) {
        return from << 8 | to;
    }

    /** A new message of the same pair takes the place of one that is not whole. */
    private void begin(long micros, int source, int destination, int pgn, byte[] data) {
        Integer key = key(source, destination);
        if (sessions.remove(key) != null) {
            lost++;
        }
        int size = data[1] & 0xFF | (data[2] & 0xFF) << 8;
        int packets = data[3] & 0xFF;
        if (!J1939Decoder.isWanted(pgn)) {
            return;
        }
        if (size < LEAST_SIZE || size > MOST_SIZE || packets != (size + 6) / TransportSession.PACKET) {
            lost++;
            return;
        }
        if (sessions.size() >= MOST_SESSIONS) {
            Iterator<Integer> oldest = sessions.keySet().iterator();
            oldest.next();
            oldest.remove();
            lost++;
        }
        sessions.put(key, new TransportSession(micros, pgn, destination == ALL, size, packets));
    }

    private void heard(long micros, Integer key, int pgn) {
        TransportSession session = sessions.get(key);
        if (session != null && session.pgn() == pgn) {
            session.heard(micros);
        }
    }

    private void drop(Integer key, int pgn) {
        TransportSession session = sessions.get(key);
        if (session != null && session.pgn() == pgn) {
            sessions.remove(key);
            lost++;
        }
    }

    void data(long micros, int source, int destination, byte[] data, int length) {
        if (sessions.isEmpty()) {
            return;
        }
        Integer key = key(source, destination);
        TransportSession session = sessions.get(key);
        if (session == null) {
            return; // of a message nobody here asked for, or that began before the log
        }
        boolean late = session.isLate(micros, BROADCAST_MICROS, CONNECTION_MICROS);
        if (late || !session.take(micros, data, length)) {
            sessions.remove(key);
            lost++;
        } else if (session.isWhole()) {
            sessions.remove(key);
            receiver.message(micros, session.pgn(), source, session.data(), session.size());
        }
    }

    void end() {
        lost += sessions.size();
        sessions.clear();
    }
}
