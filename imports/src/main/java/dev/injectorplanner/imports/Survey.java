package dev.injectorplanner.imports;

import dev.injectorplanner.imports.file.RawRows;
import dev.injectorplanner.imports.file.RawSheet;
import java.util.List;

/** What a first passage through a sheet finds: its headings, how many rows, whether a value stands under no heading. */
final class Survey implements RawRows {
    private List<String> headings = List.of();
    private long headingLine;
    private long rows;
    private long strayLine;
    private int strayAt;

    static Survey of(RawSheet sheet) {
        Survey survey = new Survey();
        sheet.read(survey);
        return survey;
    }

    @Override
    public void row(long line, String[] cells) {
        if (RawRows.isBlank(cells)) {
            return;
        }
        if (headings.isEmpty()) {
            headings = List.of(cells);
            headingLine = line;
            return;
        }
        rows++;
        for (int at = 0; strayLine == 0 && at < Math.min(cells.length, headings.size()); at++) {
            if (headings.get(at).isBlank() && !cells[at].isBlank()) {
                strayLine = line;
                strayAt = at;
            }
        }
    }

    /** Whether there is not even a line of headings. */
    boolean isEmpty() {
        return headings.isEmpty();
    }

    List<String> headings() {
        return headings;
    }

    long headingLine() {
        return headingLine;
    }

    /** Rows below the headings that are not blank. */
    long rows() {
        return rows;
    }

    /** The first line with a value under a blank heading; 0 if there is none. */
    long strayLine() {
        return strayLine;
    }

    /** Position of that value, from 0. */
    int strayAt() {
        return strayAt;
    }
}
