package dev.injectorplanner.imports.j1939;

import java.util.ArrayList;
import java.util.List;

/**
 * A fault message of one ECU.
 *
 * @param micros when it was complete, as the log counts
 * @param source address of the ECU, 0 to 255; 0 is the engine
 * @param kind whether its faults are active
 * @param lamps the lamps it asks for
 * @param codes its faults; empty where it has none
 */
public record FaultMessage(long micros, int source, Kind kind, Lamps lamps, List<TroubleCode> codes) {
    private static final int HEAD = 2;
    private static final int CODE = 4;

    /** Which faults a message holds. */
    public enum Kind {
        /** DM1, PGN 65226. */
        ACTIVE("active"),
        /** DM2, PGN 65227. */
        PREVIOUS("previous");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public FaultMessage {
        codes = List.copyOf(codes);
    }

    /** Whether bytes are long enough for a fault message: the lamps and one code. */
    static boolean fits(int length) {
        return length >= HEAD + CODE;
    }

    /** Four bytes of 0, or of 0xFF, stand for no fault; so do the last bytes that make no whole code. */
    static FaultMessage of(long micros, int source, Kind kind, byte[] data, int length, SpnLayout layout) {
        List<TroubleCode> codes = new ArrayList<>();
        for (int at = HEAD; at + CODE <= length; at += CODE) {
            if (!isFilled(data, at, 0) && !isFilled(data, at, 0xFF)) {
                codes.add(TroubleCode.of(data, at, layout));
            }
        }
        return new FaultMessage(micros, source, kind, Lamps.of(data[0] & 0xFF, data[1] & 0xFF), codes);
    }

    private static boolean isFilled(byte[] data, int at, int value) {
        for (int i = 0; i < CODE; i++) {
            if ((data[at + i] & 0xFF) != value) {
                return false;
            }
        }
        return true;
    }
}
