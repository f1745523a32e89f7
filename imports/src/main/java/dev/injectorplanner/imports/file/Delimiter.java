package dev.injectorplanner.imports.file;

import java.util.Collections;
import java.util.List;

/**
 * What stands between the cells of a text file: of comma, semicolon and tab the one that cuts most of the first lines into
 * most cells; a line of titles above the headings has none or few.
 */
final class Delimiter {
    /** Lines that are looked at. */
    static final int LINES = 20;

    private static final String ALL = ",;\t";

    private Delimiter() {}

    static char of(List<String> lines) {
        char best = ',';
        int most = 0;
        for (char each : ALL.toCharArray()) {
            List<Integer> counts = lines.stream().map(line -> count(line, each)).toList();
            int usual = counts.stream()
                    .filter(count -> count > 0)
                    .max((a, b) ->
                            Integer.compare(a * Collections.frequency(counts, a), b * Collections.frequency(counts, b)))
                    .orElse(0);
            int cuts = usual * Collections.frequency(counts, usual);
            if (cuts > most) {
                most = cuts;
                best = each;
            }
        }
        return best;
    }

    /** How often it stands outside quotation marks. */
    private static int count(String line, char sign) {
        int count = 0;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            quoted ^= line.charAt(i) == '"';
            count += !quoted && line.charAt(i) == sign ? 1 : 0;
        }
        return count;
    }
}
