package dev.injectorplanner.imports.bus;

/** The cells of a line between blanks, commas, semicolons, quotes, brackets and hash signs, as places in its bytes. */
final class Cells {
    private static final int MOST = 100;
    private static final boolean[] SEPARATOR = new boolean[128];
    private static final int[] HEX = new int[128];

    static {
        for (char separator : " \t,;()\"#\r\n\f".toCharArray()) {
            SEPARATOR[separator] = true;
        }
        for (int i = 0; i < HEX.length; i++) {
            HEX[i] = Character.digit(i, 16);
        }
    }

    private final int[] from = new int[MOST];
    private final int[] to = new int[MOST];
    private byte[] text = new byte[0];
    private int count;

    /** Looks a line through; cells beyond the first {@value #MOST} are left out. */
    void of(byte[] line, int start, int end) {
        text = line;
        count = 0;
        int at = start;
        while (at < end && count < MOST) {
            while (at < end && text[at] >= 0 && SEPARATOR[text[at]]) {
                at++;
            }
            if (at < end) {
                from[count] = at;
                while (at < end && !(text[at] >= 0 && SEPARATOR[text[at]])) {
                    at++;
                }
                to[count++] = at;
            }
        }
    }

    int count() {
        return count;
    }

    int from(int cell) {
        return from[cell];
    }

    int to(int cell) {
        return to[cell];
    }

    int length(int cell) {
        return to[cell] - from[cell];
    }

    /** A letter of a cell in capitals; 0 beyond its end. */
    char letter(int cell, int at) {
        if (at >= length(cell) || text[from[cell] + at] < 0) {
            return 0;
        }
        char letter = (char) text[from[cell] + at];
        return letter >= 'a' && letter <= 'z' ? (char) (letter - 32) : letter;
    }

    boolean isDigit(int cell, int at) {
        char letter = letter(cell, at);
        return letter >= '0' && letter <= '9';
    }

    /** A hexadecimal digit's value, or -1. */
    int hex(int cell, int at) {
        return HEX[letter(cell, at)];
    }

    /** Where the digits of a cell begin: behind a {@code 0x}. */
    int behindPrefix(int cell) {
        return letter(cell, 0) == '0' && letter(cell, 1) == 'X' ? 2 : 0;
    }

    /** How many hexadecimal digits follow each other from a place on. */
    int hexDigits(int cell, int at) {
        int end = at;
        while (hex(cell, end) >= 0) {
            end++;
        }
        return end - at;
    }

    /** Whether a cell has only capital or small letters. */
    boolean isWord(int cell) {
        for (int at = 0; at < length(cell); at++) {
            char letter = letter(cell, at);
            if (letter < 'A' || letter > 'Z') {
                return false;
            }
        }
        return true;
    }

    /** Digits of a cell as a number, or -1 where something else is among them. */
    long number(int cell, int at, int digits) {
        long value = 0;
        for (int i = at; i < at + digits; i++) {
            if (!isDigit(cell, i)) {
                return -1;
            }
            value = value * 10 + (letter(cell, i) - '0');
        }
        return value;
    }
}
