package dev.injectorplanner.imports;

import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.table.Table;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which of the first rows of a sheet holds the headings: one that a kept match knows, else one that has the columns of a
 * table, else the first.
 */
final class HeadingRow {
    /** Rows that are looked at: titles, a day of printing and a legend are not longer. */
    static final int LOOKED_AT = 40;

    private final ReadSettings settings;
    private final @Nullable Table<?> named;
    private @Nullable FileMatch match;

    /** @param named the table that the file must hold by what was said or by its name, or null */
    HeadingRow(ReadSettings settings, @Nullable Table<?> named) {
        this.settings = settings;
        this.named = named;
    }

    /** Its place among rows that are not blank, from 0. */
    int choose(List<String[]> first) {
        for (int i = 0; i < first.size(); i++) {
            match = settings.findMatch(List.of(first.get(i)));
            if (match != null && settings.as() != null && !settings.as().name().equals(match.table())) {
                match = null; // what is said now goes before what was kept
            }
            if (match != null) {
                return i;
            }
        }
        for (int i = 0; i < first.size(); i++) {
            List<String> headings = List.of(first.get(i));
            boolean fits = named == null
                    ? TableFinder.byHeadings(headings) != null
                    : new HeadingMatch<>(named, headings, settings.dates())
                            .missing()
                            .isEmpty();
            if (fits) {
                return i;
            }
        }
        return 0;
    }

    /** The kept match that knows the headings, or null. */
    @Nullable
    FileMatch match() {
        return match;
    }
}
