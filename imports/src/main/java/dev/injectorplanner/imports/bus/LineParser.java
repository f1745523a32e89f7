package dev.injectorplanner.imports.bus;

import java.time.ZoneId;

/**
 * One line as a frame. {@code (1436509052.249713) can0 18FECA00#40FF5B000301FFFF} is read byte by byte; anything else goes
 * through {@link TableLine}.
 */
final class LineParser {
    private static final int[] HEX = new int[256];
    private static final int MOST_29_BITS = 0x1FFF_FFFF;
    private static final int MICRO_DIGITS = 6;
    private static final long MOST_SECONDS = 253_402_300_799L;

    static {
        for (int i = 0; i < HEX.length; i++) {
            HEX[i] = i > 127 ? -1 : Character.digit(i, 16);
        }
    }

    /** What a line is. */
    enum Kind {
        FRAME,
        /** A frame that carries no data: a remote or an error frame. */
        NO_DATA,
        BLANK,
        HEADING,
        DAMAGED
    }

    private final TableLine table;
    private final byte[] data = new byte[64];
    private long micros;
    private int id;
    private boolean extended;
    private int length;
    private LogClock clock = LogClock.UTC;
    private int at;

    LineParser(ZoneId zone) {
        table = new TableLine(zone);
    }

    long micros() {
        return micros;
    }

    int id() {
        return id;
    }

    boolean extended() {
        return extended;
    }

    byte[] data() {
        return data;
    }

    int length() {
        return length;
    }

    LogClock clock() {
        return clock;
    }

    Kind parse(byte[] text, int from, int to) {
        int start = from;
        int end = to;
        while (end > start && text[end - 1] <= ' ' && text[end - 1] >= 0) {
            end--;
        }
        while (start < end && text[start] <= ' ' && text[start] >= 0) {
            start++;
        }
        if (start == end || text[start] == '#' || text[start] == ';') {
            return Kind.BLANK;
        }
        if (text[start] == '(') {
            Kind quick = candump(text, start + 1, end);
            if (quick != Kind.DAMAGED || contains(text, start, end, '#')) {
                return quick;
            }
        }
        return table(text, start, end);
    }

    private static boolean contains(byte[] text, int from, int to, char wanted) {
        for (int i = from; i < to; i++) {
            if (text[i] == wanted) {
                return true;
            }
        }
        return false;
    }

    private Kind candump(byte[] text, int start, int end) {
        at = start;
        if (!time(text, end) || !blanks(text, end)) {
            return Kind.DAMAGED;
        }
        while (at < end && text[at] > ' ') { // the name of the interface
            at++;
        }
        if (!blanks(text, end)) {
            return Kind.DAMAGED;
        }
        int idFrom = at;
        int value = 0;
        while (at < end && hex(text[at]) >= 0 && at - idFrom < 8) {
            value = value << 4 | hex(text[at++]);
        }
        int digits = at - idFrom;
        if (digits != 3 && digits != 8 || at >= end || text[at] != '#') {
            return Kind.DAMAGED;
        }
        extended = digits == 8;
        id = value;
        at++;
        if (value < 0 || value > MOST_29_BITS || at < end && text[at] == 'R') {
            return Kind.NO_DATA;
        }
        return bytes(text, end);
    }

    private boolean time(byte[] text, int end) {
        long seconds = 0;
        int digits = 0;
        while (at < end && text[at] >= '0' && text[at] <= '9' && digits < 12) {
            seconds = seconds * 10 + (text[at++] - '0');
            digits++;
        }
        if (digits == 0 || seconds > MOST_SECONDS || at >= end || text[at] != '.') {
            return false;
        }
        at++;
        long fraction = 0;
        int places = 0;
        while (at < end && text[at] >= '0' && text[at] <= '9') {
            if (places < MICRO_DIGITS) {
                fraction = fraction * 10 + (text[at] - '0');
                places++;
            }
            at++;
        }
        if (places == 0 || at >= end || text[at] != ')') {
            return false;
        }
        for (; places < MICRO_DIGITS; places++) {
            fraction *= 10;
        }
        at++;
        micros = seconds * 1_000_000 + fraction;
        clock = seconds >= CellTime.FIRST_EPOCH_SECOND ? LogClock.UTC : LogClock.START_OF_LOG;
        return true;
    }

    private boolean blanks(byte[] text, int end) {
        int from = at;
        while (at < end && text[at] == ' ') {
            at++;
        }
        return at > from && at < end;
    }

    /** Data after the {@code #}; after {@code ##} and a digit of flags that of CAN FD. What follows a blank is left. */
    private Kind bytes(byte[] text, int end) {
        int most = 8;
        if (at < end && text[at] == '#') {
            at += 2;
            most = 64;
        }
        int count = 0;
        while (at < end && text[at] != ' ') {
            int high = hex(text[at]);
            int low = at + 1 < end ? hex(text[at + 1]) : -1;
            if (high < 0 || low < 0 || count == most) {
                return Kind.DAMAGED;
            }
            data[count++] = (byte) (high << 4 | low);
            at += 2;
            if (at < end && text[at] == '.') {
                at++;
            }
        }
        length = count;
        return Kind.FRAME;
    }

    private static int hex(byte letter) {
        return HEX[letter & 0xFF];
    }

    private Kind table(byte[] text, int start, int end) {
        Kind kind = table.parse(text, start, end, data);
        if (kind == Kind.FRAME) {
            micros = table.micros();
            id = table.id();
            extended = table.extended();
            length = table.length();
            clock = table.clock();
        }
        return kind;
    }

    /** What is wrong with a damaged line, with its beginning as far as it can be shown. */
    String complaint(byte[] text, int from, int to) {
        StringBuilder shown = new StringBuilder();
        for (int i = from; i < Math.min(to, from + 40); i++) {
            shown.append(text[i] >= ' ' && text[i] < 127 ? (char) text[i] : '?');
        }
        return "is not a frame with its time, identifier and bytes: \""
                + shown.toString().strip() + "\"";
    }
}
