package dev.injectorplanner.imports.bus;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * The time at the start of a line: seconds (milli- or microseconds where the number is too large for them), a day with a time
 * in one cell or two, with or without an offset, or a time alone.
 */
final class CellTime {
    /** Times below this count from the start of a recording: 1973, before any such log. */
    static final long FIRST_EPOCH_SECOND = 100_000_000L;

    private static final long MILLIS_FROM = 100_000_000_000L;
    private static final long MICROS_FROM = 100_000_000_000_000L;
    private static final long MOST_SECONDS = 253_402_300_799L;
    private static final long DAY_SECONDS = 86_400;

    private final Cells cells;
    private final ZoneId zone;
    private long micros;
    private LogClock clock = LogClock.UTC;
    private long knownDay = -1;
    private long knownEpochDay;
    private long knownMinute = Long.MIN_VALUE;
    private int knownOffset;
    private int at;
    private long secondOfDay;
    private long fraction;

    CellTime(Cells cells, ZoneId zone) {
        this.cells = cells;
        this.zone = zone;
    }

    long micros() {
        return micros;
    }

    LogClock clock() {
        return clock;
    }

    /** Cells that the time takes, a running number before it included; 0 where there is none. */
    int read() {
        int cell = isRunningNumber() ? 1 : 0;
        if (cells.count() <= cell) {
            return 0;
        }
        if (isNumber(cell)) {
            return number(cell) ? cell + 1 : 0;
        }
        if (cells.letter(cell, 2) == ':') {
            return timeOfDay(cell, 0) && at == cells.length(cell) && sinceMidnight() ? cell + 1 : 0;
        }
        if (cells.letter(cell, 4) != '-' || !day(cell)) {
            return 0;
        }
        boolean alone = cells.length(cell) == 10;
        int second = alone ? cell + 1 : cell;
        if (second >= cells.count() || !alone && cells.letter(cell, 10) != 'T') {
            return 0;
        }
        return timeOfDay(second, alone ? 0 : 11) && moment(second) ? second + 1 : 0;
    }

    /** A whole number with a time behind it. */
    private boolean isRunningNumber() {
        if (cells.count() < 3 || cells.length(0) > 9 || cells.number(0, 0, cells.length(0)) < 0) {
            return false;
        }
        boolean fractional = isNumber(1) && !isWhole(1);
        return fractional || cells.letter(1, 2) == ':' || cells.letter(1, 4) == '-';
    }

    private boolean isWhole(int cell) {
        return cells.number(cell, 0, cells.length(cell)) >= 0;
    }

    private boolean isNumber(int cell) {
        int length = cells.length(cell);
        int whole = 0;
        while (cells.isDigit(cell, whole)) {
            whole++;
        }
        if (whole == 0 || whole > 17) {
            return false;
        }
        int places = length - whole - 1;
        return whole == length
                || cells.letter(cell, whole) == '.' && places >= 1 && cells.number(cell, whole + 1, places) >= 0;
    }

    private boolean number(int cell) {
        int whole = 0;
        while (cells.isDigit(cell, whole)) {
            whole++;
        }
        long value = cells.number(cell, 0, whole);
        long seconds = value;
        if (value >= MICROS_FROM) {
            micros = value;
            seconds = value / 1_000_000;
        } else if (value >= MILLIS_FROM) {
            micros = value * 1_000;
            seconds = value / 1_000;
        } else {
            micros = value * 1_000_000 + fraction(cell, whole);
        }
        clock = seconds >= FIRST_EPOCH_SECOND ? LogClock.UTC : LogClock.START_OF_LOG;
        return seconds <= MOST_SECONDS;
    }

    /** Microseconds behind a decimal point; leaves {@link #at} behind them. */
    private long fraction(int cell, int point) {
        at = point;
        if (cells.letter(cell, point) != '.') {
            return 0;
        }
        long value = 0;
        int places = 0;
        at++;
        while (cells.isDigit(cell, at)) {
            if (places < 6) {
                value = value * 10 + (cells.letter(cell, at) - '0');
                places++;
            }
            at++;
        }
        for (; places < 6; places++) {
            value *= 10;
        }
        return value;
    }

    private boolean day(int cell) {
        long year = cells.number(cell, 0, 4);
        long month = cells.number(cell, 5, 2);
        long day = cells.number(cell, 8, 2);
        if (year < 0 || month < 0 || day < 0 || cells.letter(cell, 7) != '-') {
            return false;
        }
        long date = (year * 100 + month) * 100 + day;
        if (date != knownDay) {
            try {
                knownEpochDay = LocalDate.of((int) year, (int) month, (int) day).toEpochDay();
                knownDay = date;
            } catch (DateTimeException e) {
                return false;
            }
        }
        return true;
    }

    private boolean timeOfDay(int cell, int from) {
        long hour = cells.number(cell, from, 2);
        long minute = cells.number(cell, from + 3, 2);
        long second = cells.number(cell, from + 6, 2);
        boolean colons = cells.letter(cell, from + 2) == ':' && cells.letter(cell, from + 5) == ':';
        if (!colons || hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59) {
            return false;
        }
        secondOfDay = hour * 3_600 + minute * 60 + second;
        fraction = fraction(cell, from + 8);
        return true;
    }

    private boolean sinceMidnight() {
        micros = secondOfDay * 1_000_000 + fraction;
        clock = LogClock.START_OF_LOG;
        return true;
    }

    /** Day and time together, by the offset behind the time or the log's zone. */
    private boolean moment(int cell) {
        long local = knownEpochDay * DAY_SECONDS + secondOfDay;
        int offset;
        char sign = cells.letter(cell, at);
        if (sign == 'Z' && at + 1 == cells.length(cell)) {
            offset = 0;
            clock = LogClock.UTC;
        } else if ((sign == '+' || sign == '-') && at + 6 == cells.length(cell) && cells.letter(cell, at + 3) == ':') {
            long hours = cells.number(cell, at + 1, 2);
            long minutes = cells.number(cell, at + 4, 2);
            if (hours < 0 || hours > 18 || minutes < 0 || minutes > 59) {
                return false;
            }
            offset = (int) (hours * 3_600 + minutes * 60) * (sign == '-' ? -1 : 1);
            clock = LogClock.UTC;
        } else if (at == cells.length(cell)) {
            offset = offset(local);
            clock = LogClock.LOCAL;
        } else {
            return false;
        }
        micros = (local - offset) * 1_000_000 + fraction;
        return true;
    }

    private int offset(long local) {
        long minute = Math.floorDiv(local, 60);
        if (minute != knownMinute) {
            LocalDateTime time = LocalDateTime.ofEpochSecond(local, 0, ZoneOffset.UTC);
            knownOffset = time.atZone(zone).getOffset().getTotalSeconds();
            knownMinute = minute;
        }
        return knownOffset;
    }
}
