package dev.injectorplanner.reports.calendar;

import java.nio.charset.StandardCharsets;

/**
 * Folds content lines at 75 octets and never inside a character. The library counts characters, and a line of umlauts
 * would come out too long. Source: RFC 5545, 3.1.
 */
final class OctetFolding {
    /** Longest line, octets, without its line break. */
    static final int LONGEST = 75;

    private OctetFolding() {}

    /** @param unfolded whole content lines with CRLF after each */
    static String fold(String unfolded) {
        StringBuilder folded = new StringBuilder(unfolded.length() + unfolded.length() / LONGEST * 3);
        for (String line : unfolded.split("\r\n")) {
            foldLine(line, folded);
        }
        return folded.toString();
    }

    private static void foldLine(String line, StringBuilder folded) {
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            int character = line.codePointAt(i);
            String written = Character.toString(character);
            int more = written.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST) {
                folded.append("\r\n ");
                octets = 1; // the space that begins the rest
            }
            folded.append(written);
            octets += more;
            i += Character.charCount(character);
        }
        folded.append("\r\n");
    }
}
