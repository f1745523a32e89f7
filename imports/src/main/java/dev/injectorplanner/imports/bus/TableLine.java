package dev.injectorplanner.imports.bus;

import dev.injectorplanner.imports.bus.LineParser.Kind;
import java.time.ZoneId;

/**
 * A line of a hex table: the time first (a running number may stand before it), then somewhere the identifier, at last the
 * bytes, apart or together, with or without their number before them.
 */
final class TableLine {
    private static final int LONGEST = 1_000;
    private static final int MOST_11_BITS = 0x7FF;
    private static final long MOST_29_BITS = 0x1FFF_FFFF;

    private final Cells cells = new Cells();
    private final CellTime time;
    private int id;
    private boolean extended;
    private int length;

    TableLine(ZoneId zone) {
        time = new CellTime(cells, zone);
    }

    long micros() {
        return time.micros();
    }

    int id() {
        return id;
    }

    boolean extended() {
        return extended;
    }

    int length() {
        return length;
    }

    LogClock clock() {
        return time.clock();
    }

    Kind parse(byte[] text, int from, int to, byte[] data) {
        if (to - from > LONGEST) {
            return Kind.DAMAGED;
        }
        byte first = text[from];
        if (!(first >= '0' && first <= '9') && first != '(' && first != '"') {
            return Kind.HEADING;
        }
        cells.of(text, from, to);
        int after = time.read();
        int at = after == 0 ? 0 : identifier(after);
        return at > 0 && bytes(at, data) ? Kind.FRAME : Kind.DAMAGED;
    }

    /** The cell after the identifier; 0 where there is none. */
    private int identifier(int from) {
        for (int cell = from; cell < cells.count(); cell++) {
            int start = cells.behindPrefix(cell);
            int digits = cells.hexDigits(cell, start);
            char last = cells.letter(cell, start + digits);
            boolean marked = last == 'X' || last == 'H';
            boolean whole = start + digits + (marked ? 1 : 0) == cells.length(cell);
            boolean sized = start > 0 ? digits >= 1 && digits <= 8 && !marked : digits == 8 || digits == 3;
            if (whole && sized) {
                long value = 0;
                for (int at = start; at < start + digits; at++) {
                    value = value << 4 | cells.hex(cell, at);
                }
                extended = digits > 3 || value > MOST_11_BITS;
                id = (int) value;
                return value <= MOST_29_BITS ? cell + 1 : 0;
            }
        }
        return 0;
    }

    private boolean bytes(int first, byte[] data) {
        int cell = first;
        while (cell < cells.count() && isNote(cell)) {
            cell++;
        }
        int said = cell < cells.count() ? count(cell) : -1;
        if (said >= 0) {
            cell++;
        }
        int count = 0;
        for (; cell < cells.count() && count != said; cell++) {
            int start = cells.behindPrefix(cell);
            int digits = cells.hexDigits(cell, start);
            if (start + digits != cells.length(cell) || !isBytes(digits) || count + digits / 2 > data.length) {
                break;
            }
            for (int at = start; at < start + digits; at += 2) {
                data[count++] = (byte) (cells.hex(cell, at) << 4 | cells.hex(cell, at + 1));
            }
        }
        length = count;
        return count > 0 && (said < 0 || count == said);
    }

    private static boolean isBytes(int digits) {
        return digits > 0 && digits % 2 == 0;
    }

    /** A direction or another word between identifier and bytes. */
    private boolean isNote(int cell) {
        int size = cells.length(cell);
        boolean bytes = cells.hexDigits(cell, 0) == size && isBytes(size);
        boolean dash = size == 1 && cells.letter(cell, 0) == '-';
        boolean direction =
                cells.letter(cell, 0) == 'R' || cells.letter(cell, 0) == 'T' || cells.letter(cell, 0) == 'D';
        boolean word = cells.isWord(cell)
                && (size >= 3 || size == 1 && direction || size == 2 && cells.letter(cell, 1) == 'X');
        return !bytes && (dash || word);
    }

    /**
     * A number of bytes: in brackets, of one digit, or 08 with just as many bytes behind it as a frame has; -1 where the cell
     * is none.
     */
    private int count(int cell) {
        int size = cells.length(cell);
        if (cells.letter(cell, 0) == '[' && cells.letter(cell, size - 1) == ']' && size >= 3 && size <= 4) {
            return (int) cells.number(cell, 1, size - 2);
        }
        boolean eight = size == 2 && cells.number(cell, 0, 2) == 8 && cells.count() - cell == 9;
        return size == 1 || eight ? (int) cells.number(cell, 0, size) : -1;
    }
}
