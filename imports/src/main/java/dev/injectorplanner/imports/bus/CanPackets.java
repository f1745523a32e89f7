package dev.injectorplanner.imports.bus;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Packets that hold a CAN frame as SocketCAN has it: identifier with flags, most significant byte first, length, data. */
final class CanPackets {
    /** Link type of plain CAN frames. */
    static final int CAN = 227;

    /** Link type of Linux cooked frames. */
    static final int COOKED = 113;

    /** The end of the year 9999. */
    static final long MOST_MICROS = 253_402_300_799_000_000L;

    private static final int COOKED_HEAD = 16;
    private static final int PROTOCOL_CAN = 0x000C;
    private static final int PROTOCOL_CAN_FD = 0x000D;
    private static final int EXTENDED = 0x8000_0000;
    private static final int REMOTE_OR_ERROR = 0x6000_0000;

    private final FrameSink sink;
    private final LogTally tally;
    private final byte[] data = new byte[64];

    CanPackets(FrameSink sink, LogTally tally) {
        this.sink = sink;
        this.tally = tally;
    }

    void take(int linkType, long micros, ByteBuffer packet, String where) {
        int from = 0;
        if (linkType == COOKED) {
            int protocol = packet.limit() < COOKED_HEAD
                    ? 0
                    : packet.order(ByteOrder.BIG_ENDIAN).getShort(COOKED_HEAD - 2) & 0xFFFF;
            if (protocol != PROTOCOL_CAN && protocol != PROTOCOL_CAN_FD) {
                return; // another protocol on the same interface
            }
            from = COOKED_HEAD;
        } else if (linkType != CAN) {
            return;
        }
        frame(micros, packet.order(ByteOrder.BIG_ENDIAN), from, where);
    }

    private void frame(long micros, ByteBuffer packet, int from, String where) {
        int length = packet.limit() < from + 8 ? -1 : packet.get(from + 4) & 0xFF;
        if (length < 0 || length > data.length || packet.limit() < from + 8 + length) {
            tally.damage(where, "has a packet too short for its frame");
            return;
        }
        int id = packet.getInt(from);
        if ((id & REMOTE_OR_ERROR) != 0) {
            return;
        }
        packet.get(from + 8, data, 0, length);
        tally.frame();
        boolean extended = (id & EXTENDED) != 0;
        sink.frame(micros, id & (extended ? 0x1FFF_FFFF : 0x7FF), extended, data, length);
    }
}
