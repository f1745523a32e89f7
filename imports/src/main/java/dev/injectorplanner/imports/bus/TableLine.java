package dev.injectorplanner.imports.bus;

import dev.injectorplanner.imports.bus.LineParser.Kind;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A line of a hex table: cells between blanks, commas, semicolons or tabs, the time first (a running number may stand before
 * it), then somewhere the identifier, at last the bytes, apart or together, with or without their number before them.
 */
final class TableLine {
    /** Times below this count from the start of a recording: 1973, before any such log. */
    static final long FIRST_EPOCH_SECOND = 100_000_000L;

    private static final Pattern SEPARATORS = Pattern.compile("[\\s,;()\"]+");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,17}(\\.\\d{1,9})?");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern TIME = Pattern.compile("\\d{2}:\\d{2}:\\d{2}(\\.\\d{1,9})?(Z|[+-]\\d{2}:\\d{2})?");
    private static final Pattern IDENTIFIER =
            Pattern.compile("0X([0-9A-F]{1,8})|([0-9A-F]{8})[XH]?|([0-9A-F]{3})[XH]?");
    private static final Pattern BYTES = Pattern.compile("([0-9A-F]{2})+");
    private static final Pattern COUNT = Pattern.compile("\\[?(\\d{1,2})]?");
    private static final int LONGEST = 1_000;
    private static final int MOST_11_BITS = 0x7FF;
    private static final int MOST_29_BITS = 0x1FFF_FFFF;

    private final ZoneId zone;
    private long micros;
    private int id;
    private boolean extended;
    private int length;
    private LogClock clock = LogClock.UTC;

    TableLine(ZoneId zone) {
        this.zone = zone;
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

    int length() {
        return length;
    }

    LogClock clock() {
        return clock;
    }

    Kind parse(byte[] text, int from, int to, byte[] data) {
        if (to - from > LONGEST) {
            return Kind.DAMAGED;
        }
        String line = new String(text, from, to - from, StandardCharsets.ISO_8859_1).toUpperCase(Locale.ROOT);
        char first = line.charAt(0);
        if (!(first >= '0' && first <= '9') && first != '(' && first != '"') {
            return Kind.HEADING;
        }
        List<String> cells = Arrays.stream(SEPARATORS.split(line.replace('#', ' ')))
                .filter(cell -> !cell.isEmpty())
                .toList();
        int after = time(cells);
        int at = after == 0 ? 0 : identifier(cells, after);
        return at > 0 && bytes(cells.subList(at, cells.size()), data) ? Kind.FRAME : Kind.DAMAGED;
    }

    /** Cells that the time takes, a running number before it included; 0 where there is none. */
    private int time(List<String> cells) {
        int skip = cells.size() > 2
                        && cells.get(0).matches("\\d{1,9}")
                        && (cells.get(1).contains(".") || cells.get(1).matches("\\d{4}-.*|.*:.*"))
                        && (NUMBER.matcher(cells.get(1)).matches()
                                || cells.get(1).matches("[0-9].*[-:].*"))
                ? 1
                : 0;
        if (cells.size() <= skip) {
            return 0;
        }
        String cell = cells.get(skip);
        if (NUMBER.matcher(cell).matches()) {
            number(cell);
            return skip + 1;
        }
        try {
            return skip + clockTime(cell, cells.size() > skip + 1 ? cells.get(skip + 1) : "");
        } catch (DateTimeException e) {
            return 0;
        }
    }

    /** Seconds, or where the number is too large for them milliseconds or microseconds. */
    private void number(String cell) {
        double value = Double.parseDouble(cell);
        double seconds = value > 1e14 ? value / 1e6 : value > 1e11 ? value / 1e3 : value;
        micros = Math.round(seconds * 1e6);
        clock = seconds >= FIRST_EPOCH_SECOND ? LogClock.UTC : LogClock.START_OF_LOG;
    }

    private int clockTime(String cell, String next) {
        if (TIME.matcher(cell).matches()) {
            moment("1970-01-01T" + cell);
            clock = LogClock.START_OF_LOG;
            return 1;
        }
        if (DAY.matcher(cell).matches()) {
            if (!TIME.matcher(next).matches()) {
                return 0;
            }
            moment(cell + "T" + next);
            return 2;
        }
        moment(cell);
        return 1;
    }

    private void moment(String text) {
        boolean offset = text.endsWith("Z") || text.matches(".*T.*[+-]\\d{2}:\\d{2}");
        Instant moment = offset
                ? OffsetDateTime.parse(text).toInstant()
                : LocalDateTime.parse(text).atZone(zone).toInstant();
        clock = offset ? LogClock.UTC : LogClock.LOCAL;
        micros = Math.addExact(Math.multiplyExact(moment.getEpochSecond(), 1_000_000L), moment.getNano() / 1_000L);
    }

    /** The cell after the identifier; 0 where there is none. */
    private int identifier(List<String> cells, int from) {
        for (int i = from; i < cells.size(); i++) {
            var found = IDENTIFIER.matcher(cells.get(i));
            if (found.matches()) {
                String digits = cells.get(i).replaceFirst("^0X", "").replaceFirst("[XH]$", "");
                long value = Long.parseLong(digits, 16);
                extended = digits.length() > 3 || value > MOST_11_BITS;
                id = (int) value;
                return value <= MOST_29_BITS ? i + 1 : 0;
            }
        }
        return 0;
    }

    private boolean bytes(List<String> cells, byte[] data) {
        int from = 0;
        while (from < cells.size()
                && cells.get(from).matches("RX|TX|R|T|D|[A-Z]{3,}|-")
                && !BYTES.matcher(cells.get(from)).matches()) {
            from++;
        }
        int said = -1;
        if (from < cells.size() && isCount(cells, from)) {
            said = Integer.parseInt(cells.get(from).replaceAll("[\\[\\]]", ""));
            from++;
        }
        int count = 0;
        for (int i = from; i < cells.size() && count != said; i++) {
            String cell = cells.get(i).replaceFirst("^0X", "");
            if (!BYTES.matcher(cell).matches() || count + cell.length() / 2 > data.length) {
                break;
            }
            for (int digit = 0; digit < cell.length(); digit += 2) {
                data[count++] = (byte) Integer.parseInt(cell.substring(digit, digit + 2), 16);
            }
        }
        length = count;
        return count > 0 && (said < 0 || count == said);
    }

    /** A number of bytes: in brackets, of one digit, or of two with just as many bytes behind it as a frame has. */
    private static boolean isCount(List<String> cells, int at) {
        String cell = cells.get(at);
        return COUNT.matcher(cell).matches()
                && (cell.length() == 1 || cell.startsWith("[") || cell.equals("08") && cells.size() - at == 9);
    }
}
