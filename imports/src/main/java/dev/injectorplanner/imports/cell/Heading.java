package dev.injectorplanner.imports.cell;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;

/** Headings and names as they are compared: small letters and digits only. */
public final class Heading {
    private Heading() {}

    /** {@code Odometer (km)}, {@code odometer_km} and {@code ODOMETER-KM} all become {@code odometerkm}. */
    public static String plain(String heading) {
        String plain = Normalizer.normalize(heading, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        StringBuilder kept = new StringBuilder(plain.length());
        plain.codePoints().filter(Character::isLetterOrDigit).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** The candidate nearest to a heading by single-character edits, or empty where none is near. */
    public static String nearest(String heading, Collection<String> candidates) {
        String plain = plain(heading);
        String nearest = "";
        int least = Integer.MAX_VALUE;
        for (String candidate : candidates) {
            String other = plain(candidate);
            int edits = edits(plain, other);
            boolean contained =
                    plain.length() >= 3 && other.length() >= 3 && (plain.contains(other) || other.contains(plain));
            int allowed = Math.max(1, Math.min(plain.length(), other.length()) / 3);
            if (edits < least && (edits <= allowed || contained)) {
                least = edits;
                nearest = candidate;
            }
        }
        return nearest;
    }

    /** Levenshtein's distance (1966): fewest insertions, deletions and changes of a character. */
    private static int edits(String a, String b) {
        int[] before = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] now = new int[b.length() + 1];
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(change, Math.min(before[j], now[j - 1]) + 1);
            }
            before = now;
        }
        return before[b.length()];
    }
}
