package dev.injectorplanner.reports.paper;

import java.util.Locale;

/** Paper that offices print on. */
public enum PaperSize {
    A4,
    LETTER;

    /** As style sheets name it. */
    public String css() {
        return this == A4 ? "A4" : "letter";
    }

    /** By its name in addresses and settings; A4 where it is none. */
    public static PaperSize of(String name) {
        return name.strip().toUpperCase(Locale.ROOT).equals(LETTER.name()) ? LETTER : A4;
    }
}
