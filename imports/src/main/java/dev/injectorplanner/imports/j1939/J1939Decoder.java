package dev.injectorplanner.imports.j1939;

import dev.injectorplanner.imports.bus.FrameSink;
import java.nio.charset.StandardCharsets;
import java.util.function.IntFunction;

/**
 * Decodes fault messages DM1 (PGN 65226) and DM2 (65227), vehicle distance (65248, high resolution 65217), engine hours
 * (65253) and VIN (65260), in one frame or by the transport protocol. Sources: SAE J1939-21, -71 and -73, as published
 * decoders and recorded logs show them.
 */
public final class J1939Decoder implements FrameSink {
    static final int ACTIVE_FAULTS = 65_226;
    static final int PREVIOUS_FAULTS = 65_227;
    static final int DISTANCE = 65_248;
    static final int FINE_DISTANCE = 65_217;
    static final int ENGINE_HOURS = 65_253;
    static final int VIN = 65_260;

    private static final int TRANSPORT_CONTROL = 0xEC00;
    private static final int TRANSPORT_DATA = 0xEB00;
    private static final int FIRST_BROADCAST_FORMAT = 240;
    private static final long MOST_VALUE = 0xFAFF_FFFFL;

    private final BusMessages messages;
    private final IntFunction<SpnLayout> layoutOfSource;
    private final Transport transport;
    private long tooShort;

    /** @param layoutOfSource how an ECU lays out its SPNs */
    public J1939Decoder(BusMessages messages, IntFunction<SpnLayout> layoutOfSource) {
        this.messages = messages;
        this.layoutOfSource = layoutOfSource;
        this.transport = new Transport(this::message);
    }

    /** With today's layout for all. */
    public J1939Decoder(BusMessages messages) {
        this(messages, source -> SpnLayout.VERSION_4);
    }

    @Override
    public void frame(long micros, int id, boolean extended, byte[] data, int length) {
        if (!extended) {
            return;
        }
        int format = id >> 16 & 0xFF;
        int specific = id >> 8 & 0xFF;
        int source = id & 0xFF;
        int pgn = (id >> 8 & 0x3_0000) | format << 8;
        if (format >= FIRST_BROADCAST_FORMAT) {
            int whole = pgn | specific;
            if (isWanted(whole)) {
                message(micros, whole, source, data, length);
            }
        } else if (pgn == TRANSPORT_DATA) {
            transport.data(micros, source, specific, data, length);
        } else if (pgn == TRANSPORT_CONTROL) {
            transport.control(micros, source, specific, data, length);
        }
    }

    static boolean isWanted(int pgn) {
        return switch (pgn) {
            case ACTIVE_FAULTS, PREVIOUS_FAULTS, DISTANCE, FINE_DISTANCE, ENGINE_HOURS, VIN -> true;
            default -> false;
        };
    }

    private void message(long micros, int pgn, int source, byte[] data, int length) {
        switch (pgn) {
            case ACTIVE_FAULTS -> faults(micros, source, FaultMessage.Kind.ACTIVE, data, length);
            case PREVIOUS_FAULTS -> faults(micros, source, FaultMessage.Kind.PREVIOUS, data, length);
            case DISTANCE -> {
                long value = value(data, 4, length);
                if (value >= 0) {
                    messages.distance(micros, source, value / 8.0, false);
                }
            }
            case FINE_DISTANCE -> {
                long value = value(data, 0, length);
                if (value >= 0) {
                    messages.distance(micros, source, value / 200.0, true);
                }
            }
            case ENGINE_HOURS -> {
                long value = value(data, 0, length);
                if (value >= 0) {
                    messages.engineHours(micros, source, value / 20.0);
                }
            }
            default -> vin(micros, source, data, length);
        }
    }

    private void faults(long micros, int source, FaultMessage.Kind kind, byte[] data, int length) {
        if (!FaultMessage.fits(length)) {
            tooShort++;
            return;
        }
        SpnLayout layout = layoutOfSource.apply(source);
        messages.faults(FaultMessage.of(micros, source, kind, data, length, layout));
    }

    /** Four bytes, least significant first; below 0 where they are missing, in error or not available. */
    private static long value(byte[] data, int at, int length) {
        if (length < at + 4) {
            return -1;
        }
        long value = data[at] & 0xFFL
                | (data[at + 1] & 0xFFL) << 8
                | (data[at + 2] & 0xFFL) << 16
                | (data[at + 3] & 0xFFL) << 24;
        return value <= MOST_VALUE ? value : -1;
    }

    /** Text up to its {@code *}. */
    private void vin(long micros, int source, byte[] data, int length) {
        String text = new String(data, 0, length, StandardCharsets.ISO_8859_1);
        int end = text.indexOf('*');
        String vin = (end < 0 ? text : text.substring(0, end)).strip();
        if (!vin.isEmpty() && vin.chars().allMatch(letter -> letter > ' ' && letter < 127)) {
            messages.vin(micros, source, vin);
        }
    }

    /** Messages of several packets that never became whole, and fault messages that were too short. */
    public long lostMessages() {
        return transport.lost() + tooShort;
    }

    /** The log has ended: what is not whole now never will be. */
    public void end() {
        transport.end();
    }
}
