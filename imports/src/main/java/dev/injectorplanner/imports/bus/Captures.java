package dev.injectorplanner.imports.bus;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Captures of SocketCAN in the formats pcapng (draft-ietf-opsawg-pcapng) and pcap (draft-ietf-opsawg-pcap): link types 227,
 * CAN frames, and 113, Linux cooked frames that hold CAN. A block or packet whose length cannot be is the end of what can be
 * read.
 */
final class Captures {
    static final int MAGIC_BYTES = 4;

    private static final int SECTION = 0x0A0D0D0A;
    private static final int BYTE_ORDER = 0x1A2B3C4D;
    private static final int PCAP_MICROS = 0xA1B2C3D4;
    private static final int PCAP_NANOS = 0xA1B23C4D;
    private static final int LONGEST = 1 << 20;
    private static final int MOST_INTERFACES = 256;

    private final Path name;
    private final InputStream in;
    private final CanPackets packets;
    private final LogTally tally;
    private final List<CaptureInterface> interfaces = new ArrayList<>();

    /** Whether any section named a CAN interface: a later section begins its list anew. */
    private boolean hasCan;

    private ByteOrder order = ByteOrder.LITTLE_ENDIAN;
    private long offset;

    Captures(Path name, InputStream in, FrameSink sink, LogTally tally) {
        this.name = name;
        this.in = in;
        this.packets = new CanPackets(sink, tally);
        this.tally = tally;
    }

    static boolean isCapture(byte[] head) {
        if (head.length < MAGIC_BYTES) {
            return false;
        }
        int magic = ByteBuffer.wrap(head).getInt();
        return magic == SECTION || isPcap(magic) || isPcap(Integer.reverseBytes(magic));
    }

    private static boolean isPcap(int magic) {
        return magic == PCAP_MICROS || magic == PCAP_NANOS;
    }

    void read() throws IOException {
        try {
            int magic = bytes(MAGIC_BYTES).order(ByteOrder.BIG_ENDIAN).getInt();
            if (magic == SECTION) {
                section();
                blocks();
            } else {
                order = isPcap(magic) ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
                pcap(isPcap(magic) ? magic : Integer.reverseBytes(magic));
            }
        } catch (EOFException e) {
            damage("ends within a packet");
        }
        if (!hasCan) {
            throw new FileRefusedException(
                    name,
                    "is a capture without a CAN interface" + interfaces(),
                    "capture the CAN interface itself, or log it with candump -L");
        }
    }

    private String interfaces() {
        return interfaces.isEmpty() ? "" : " (link type " + interfaces.get(0).linkType() + ")";
    }

    private void damage(String what) {
        tally.line();
        tally.damage("byte " + offset, what + "; the rest was not read");
    }

    private ByteBuffer bytes(int count) throws IOException {
        byte[] read = in.readNBytes(count);
        offset += read.length;
        if (read.length < count) {
            throw new EOFException();
        }
        return ByteBuffer.wrap(read).order(order);
    }

    /** The head of a section, after its type: length, byte order, the rest is passed over. */
    private boolean section() throws IOException {
        byte[] head = bytes(8).array();
        ByteBuffer big = ByteBuffer.wrap(head).order(ByteOrder.BIG_ENDIAN);
        order = big.getInt(4) == BYTE_ORDER ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
        int length = ByteBuffer.wrap(head).order(order).getInt();
        if (!isLength(length) || length < 28) {
            damage("has a section with an impossible length");
            return false;
        }
        bytes(length - 12);
        interfaces.clear();
        return true;
    }

    private void blocks() throws IOException {
        while (true) {
            byte[] type = in.readNBytes(4);
            offset += type.length;
            if (type.length == 0) {
                return;
            }
            if (type.length < 4) {
                throw new EOFException();
            }
            int kind = ByteBuffer.wrap(type).order(order).getInt();
            if (kind == SECTION) {
                if (!section()) {
                    return;
                }
                continue;
            }
            int length = bytes(4).getInt();
            if (!isLength(length)) {
                damage("has a block of " + Integer.toUnsignedString(length) + " bytes");
                return;
            }
            ByteBuffer body = bytes(length - 12);
            bytes(4);
            block(kind, body);
        }
    }

    private void add(CaptureInterface on) {
        interfaces.add(on);
        hasCan |= on.isCan();
    }

    private static boolean isLength(int length) {
        return length >= 12 && length <= LONGEST && length % 4 == 0;
    }

    private void block(int kind, ByteBuffer body) {
        if (kind == 1 && body.remaining() >= 8 && interfaces.size() < MOST_INTERFACES) {
            add(CaptureInterface.of(body));
        } else if (kind == 6 && body.remaining() >= 20) {
            int number = body.getInt(0);
            long time = (body.getInt(4) & 0xFFFF_FFFFL) << 32 | body.getInt(8) & 0xFFFF_FFFFL;
            packet(number, time, body, 20, body.getInt(12));
        }
    }

    private void packet(int number, long time, ByteBuffer body, int from, int captured) {
        tally.line();
        if (number < 0 || number >= interfaces.size() || captured < 0 || captured > body.limit() - from) {
            tally.damage("byte " + offset, "has a packet of an unknown interface or longer than its block");
            return;
        }
        CaptureInterface on = interfaces.get(number);
        packets.take(on.linkType(), on.micros(time), body.slice(from, captured), "byte " + offset);
    }

    private void pcap(int magic) throws IOException {
        ByteBuffer head = bytes(20);
        CaptureInterface on = new CaptureInterface(head.getInt(16) & 0xFFFF, CaptureInterface.USUAL, 0);
        add(on);
        long perFraction = magic == PCAP_NANOS ? 1_000 : 1;
        while (true) {
            byte[] first = in.readNBytes(4);
            offset += first.length;
            if (first.length == 0) {
                return;
            }
            if (first.length < 4) {
                throw new EOFException();
            }
            long seconds = ByteBuffer.wrap(first).order(order).getInt() & 0xFFFF_FFFFL;
            ByteBuffer rest = bytes(12);
            long fraction = (rest.getInt(0) & 0xFFFF_FFFFL) / perFraction;
            int captured = rest.getInt(4);
            if (captured < 0 || captured > LONGEST) {
                damage("has a packet of " + Integer.toUnsignedString(captured) + " bytes");
                return;
            }
            tally.line();
            packets.take(on.linkType(), seconds * 1_000_000 + fraction, bytes(captured), "byte " + offset);
        }
    }
}
