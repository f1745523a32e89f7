package dev.injectorplanner.imports.j1939;

import dev.injectorplanner.imports.bus.*;
import dev.injectorplanner.imports.j1939.BusEncoder.Frame;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The same frames in every form that a log may have. */
public final class LogWriter {
    private static final HexFormat HEX = HexFormat.of().withUpperCase();

    private LogWriter() {}

    public static byte[] candump(List<Frame> frames) {
        return lines(
                "",
                frames,
                frame -> String.format(
                        Locale.ROOT,
                        "(%d.%06d) can0 %08X#%s",
                        frame.micros() / 1_000_000,
                        frame.micros() % 1_000_000,
                        frame.id(),
                        HEX.formatHex(frame.data())));
    }

    /** What candump prints for people. */
    public static byte[] printed(List<Frame> frames) {
        return lines(
                "",
                frames,
                frame -> String.format(
                        Locale.ROOT,
                        " (%d.%06d)  can0  %08X   [%d]  %s",
                        frame.micros() / 1_000_000,
                        frame.micros() % 1_000_000,
                        frame.id(),
                        frame.data().length,
                        spaced(frame)));
    }

    public static byte[] csv(List<Frame> frames) {
        return lines(
                "time,id,bytes,data\n",
                frames,
                frame -> String.format(
                        Locale.ROOT,
                        "%s,0x%08X,%d,%s",
                        Instant.EPOCH.plus(frame.micros(), ChronoUnit.MICROS),
                        frame.id(),
                        frame.data().length,
                        spaced(frame)));
    }

    static byte[] numbered(List<Frame> frames) {
        int[] number = {0};
        return lines(
                "# a comment\nNo;Day;Time;Dir;Identifier;Data\n",
                frames,
                frame -> String.format(
                        Locale.ROOT,
                        "%d;%s;Rx;%08Xx;%s",
                        ++number[0],
                        Instant.EPOCH
                                .plus(frame.micros(), ChronoUnit.MICROS)
                                .toString()
                                .replace("T", ";"),
                        frame.id(),
                        HEX.formatHex(frame.data())));
    }

    private static byte[] lines(String head, List<Frame> frames, Function<Frame, String> line) {
        return (head + frames.stream().map(line).collect(Collectors.joining("\n")) + "\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    private static String spaced(Frame frame) {
        return HexFormat.ofDelimiter(" ").withUpperCase().formatHex(frame.data());
    }

    /** A capture as SocketCAN makes it. */
    public static byte[] capture(List<Frame> frames) {
        return pcapng(frames, ByteOrder.LITTLE_ENDIAN, 227, 6);
    }

    /** A capture; {@code resolution} is the option if_tsresol. */
    static byte[] pcapng(List<Frame> frames, ByteOrder order, int linkType, int resolution) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteBuffer section = ByteBuffer.allocate(28).order(order);
        section.putInt(0x0A0D0D0A)
                .putInt(28)
                .putInt(0x1A2B3C4D)
                .putShort((short) 1)
                .putShort((short) 0)
                .putLong(-1)
                .putInt(28);
        out.writeBytes(section.array());
        ByteBuffer face = ByteBuffer.allocate(32).order(order);
        face.putInt(1).putInt(32).putShort((short) linkType).putShort((short) 0).putInt(0);
        face.putShort((short) 9)
                .putShort((short) 1)
                .put((byte) resolution)
                .put(new byte[3])
                .putInt(0)
                .putInt(32);
        out.writeBytes(face.array());
        for (Frame frame : frames) {
            byte[] packet = packet(frame, linkType);
            int length = 32 + (packet.length + 3) / 4 * 4;
            long ticks = resolution == 9 ? frame.micros() * 1_000 : frame.micros();
            ByteBuffer block = ByteBuffer.allocate(length).order(order);
            block.putInt(6).putInt(length).putInt(0).putInt((int) (ticks >> 32)).putInt((int) ticks);
            block.putInt(packet.length).putInt(packet.length).put(packet).putInt(length - 4, length);
            out.writeBytes(block.array());
        }
        return out.toByteArray();
    }

    static byte[] pcap(List<Frame> frames) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteBuffer head = ByteBuffer.allocate(24).order(ByteOrder.LITTLE_ENDIAN);
        head.putInt(0xA1B2C3D4)
                .putShort((short) 2)
                .putShort((short) 4)
                .putInt(0)
                .putInt(0)
                .putInt(65_535)
                .putInt(227);
        out.writeBytes(head.array());
        for (Frame frame : frames) {
            byte[] packet = packet(frame, 227);
            ByteBuffer each = ByteBuffer.allocate(16 + packet.length).order(ByteOrder.LITTLE_ENDIAN);
            each.putInt((int) (frame.micros() / 1_000_000)).putInt((int) (frame.micros() % 1_000_000));
            each.putInt(packet.length).putInt(packet.length).put(packet);
            out.writeBytes(each.array());
        }
        return out.toByteArray();
    }

    private static byte[] packet(Frame frame, int linkType) {
        ByteBuffer packet = ByteBuffer.allocate((linkType == 113 ? 16 : 0) + 8 + frame.data().length);
        if (linkType == 113) {
            packet.putShort((short) 1)
                    .putShort((short) 280)
                    .putShort((short) 0)
                    .putLong(0)
                    .putShort((short) 0x0C);
        }
        packet.putInt(frame.id() | 0x8000_0000)
                .put((byte) frame.data().length)
                .put(new byte[3])
                .put(frame.data());
        return packet.array();
    }
}
