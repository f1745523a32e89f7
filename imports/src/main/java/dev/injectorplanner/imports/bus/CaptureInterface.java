package dev.injectorplanner.imports.bus;

import java.nio.ByteBuffer;

/**
 * An interface of a capture.
 *
 * @param linkType what its packets are
 * @param resolution option if_tsresol: 10^-n s a tick, or with the top bit 2^-n
 * @param offsetSeconds option if_tsoffset
 */
record CaptureInterface(int linkType, int resolution, long offsetSeconds) {
    private static final int RESOLUTION = 9;
    private static final int OFFSET = 14;
    static final int USUAL = 6;
    private static final int MOST_POWER = 18;

    /** From the body of an interface block. */
    static CaptureInterface of(ByteBuffer body) {
        int resolution = USUAL;
        long offset = 0;
        int at = 8;
        while (at + 4 <= body.limit()) {
            int code = body.getShort(at) & 0xFFFF;
            int length = body.getShort(at + 2) & 0xFFFF;
            if (code == 0 || at + 4 + length > body.limit()) {
                break;
            }
            if (code == RESOLUTION && length >= 1) {
                resolution = body.get(at + 4) & 0xFF;
            } else if (code == OFFSET && length >= 8) {
                offset = body.getLong(at + 4);
            }
            at += 4 + (length + 3) / 4 * 4;
        }
        return new CaptureInterface(body.getShort(0) & 0xFFFF, resolution, offset);
    }

    boolean isCan() {
        return linkType == CanPackets.CAN || linkType == CanPackets.COOKED;
    }

    /** A time stamp in microseconds; one that lies beyond the year 9999 is cut off there. */
    long micros(long ticks) {
        double perSecond = (resolution & 0x80) != 0
                ? Math.scalb(1.0, Math.min(62, resolution & 0x7F))
                : Math.pow(10, Math.min(MOST_POWER, resolution));
        long whole;
        if (perSecond == 1e6) {
            whole = ticks;
        } else if (perSecond == 1e9) {
            whole = Long.divideUnsigned(ticks, 1_000);
        } else {
            whole = Math.round(ticks / perSecond * 1e6);
        }
        long offset = Math.max(
                -CanPackets.MOST_MICROS / 1_000_000, Math.min(CanPackets.MOST_MICROS / 1_000_000, offsetSeconds));
        return Math.max(0, Math.min(CanPackets.MOST_MICROS, Math.max(0, whole))) + offset * 1_000_000;
    }
}
