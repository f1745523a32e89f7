package dev.injectorplanner.imports;

import dev.injectorplanner.imports.cell.CellText;
import dev.injectorplanner.imports.file.RawRows;
import dev.injectorplanner.imports.file.RawSheet;
import dev.injectorplanner.imports.match.FileMatch;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a first passage through a sheet finds: its headings, how many rows, whether a value stands under no heading, and
 * in which columns a comma stands before decimals.
 */
final class Survey implements RawRows {
    private static final Pattern COMMA_DECIMALS =
            Pattern.compile("[+-]?[0-9]{1,3}(\\.[0-9]{3})+,[0-9]+|[+-]?[0-9]+,([0-9]{1,2}|[0-9]{4,})|[+-]?0,[0-9]+");

    private final HeadingRow rule;
    private final List<String[]> first = new ArrayList<>();
    private final List<Long> firstLines = new ArrayList<>();
    private final Set<Integer> commaDecimals = new HashSet<>();
    private List<String> headings = List.of();
    private int headingRow = -1;
    private long headingLine;
    private long rows;
    private long strayLine;
    private int strayAt;

    private Survey(HeadingRow rule) {
        this.rule = rule;
    }

    static Survey of(RawSheet sheet, HeadingRow rule) {
        Survey survey = new Survey(rule);
        sheet.read(survey);
        survey.decide();
        return survey;
    }

    @Override
    public void row(long line, String[] cells) {
        if (RawRows.isBlank(cells)) {
            return;
        }
        if (headingRow >= 0) {
            below(line, cells);
            return;
        }
        first.add(cells);
        firstLines.add(line);
        if (first.size() == HeadingRow.LOOKED_AT) {
            decide();
        }
    }

    private void decide() {
        if (headingRow >= 0 || first.isEmpty()) {
            return;
        }
        headingRow = rule.choose(first);
        headings = rule.headings();
        headingLine = firstLines.get(headingRow);
        for (int i = headingRow + 1; i < first.size(); i++) {
            below(firstLines.get(i), first.get(i));
        }
        first.clear();
    }

    private void below(long line, String[] cells) {
        rows++;
        for (int at = 0; at < Math.min(cells.length, headings.size()); at++) {
            String cell = cells[at];
            if (strayLine == 0 && headings.get(at).isBlank() && !cell.isBlank()) {
                strayLine = line;
                strayAt = at;
            }
            if (cell.indexOf(',') > 0
                    && !commaDecimals.contains(at)
                    && COMMA_DECIMALS.matcher(CellText.trimmed(cell)).matches()) {
                commaDecimals.add(at);
            }
        }
    }

    /** Whether there is not even a line of headings. */
    boolean isEmpty() {
        return headingRow < 0;
    }

    List<String> headings() {
        return headings;
    }

    long headingLine() {
        return headingLine;
    }

    /** Rows above the headings that are not blank. */
    int titleRows() {
        return rule.overTwoRows() ? headingRow - 1 : headingRow;
    }

    /** The kept match that knows the headings, or null. */
    @Nullable
    FileMatch match() {
        return rule.match();
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

    /** Positions of columns in which a number has a comma before its decimals and can be read in no other way. */
    Set<Integer> commaDecimals() {
        return commaDecimals;
    }
}
