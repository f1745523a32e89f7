package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.CellText;
import dev.injectorplanner.imports.file.RawRows;
import dev.injectorplanner.imports.file.RawSheet;
import dev.injectorplanner.imports.match.FileMatch;
import java.util.ArrayList;
import java.util.List;

/** One sheet of a foreign file, gone through once: its first rows, its heading row, and the values of each column. */
final class SheetSample implements RawRows {
    private static final int LOOKED_AT = 40;
    private static final int TOP = 8;

    private final RawSheet sheet;
    private final long saidLine;
    private final List<Proposal.TopRow> first = new ArrayList<>();
    private final List<ColumnSample> columns = new ArrayList<>();
    private List<String> headings = List.of();
    private int headingAt = -1;
    private long headingLine;
    private long rows;

    private SheetSample(RawSheet sheet, long saidLine) {
        this.sheet = sheet;
        this.saidLine = saidLine;
    }

    /** @param headingLine line of the headings if a person said so, else 0 */
    static SheetSample of(RawSheet sheet, long headingLine) {
        SheetSample sample = new SheetSample(sheet, headingLine);
        sheet.read(sample);
        sample.decide();
        return sample;
    }

    @Override
    public void row(long line, String[] cells) {
        if (RawRows.isBlank(cells)) {
            return;
        }
        if (headingAt >= 0) {
            below(cells);
            return;
        }
        first.add(new Proposal.TopRow(line, List.of(cells)));
        if (first.size() == LOOKED_AT) {
            decide();
        }
    }

    private void decide() {
        if (headingAt >= 0 || first.isEmpty()) {
            return;
        }
        HeadingChoice choice = new HeadingChoice(first, saidLine);
        headingAt = choice.at();
        headings = FileMatch.numbered(choice.headings());
        headingLine = first.get(headingAt).line();
        headings.forEach(heading -> columns.add(new ColumnSample(heading)));
        for (int i = headingAt + 1; i < first.size(); i++) {
            below(first.get(i).cells().toArray(String[]::new));
        }
    }

    private void below(String[] cells) {
        rows++;
        for (int at = 0; at < columns.size(); at++) {
            columns.get(at).add(at < cells.length ? CellText.trimmed(cells[at]) : "");
        }
    }

    boolean isEmpty() {
        return headingAt < 0;
    }

    RawSheet sheet() {
        return sheet;
    }

    long headingLine() {
        return headingLine;
    }

    long rows() {
        return rows;
    }

    List<String> headings() {
        return headings;
    }

    /** The columns that have a heading. */
    List<ColumnSample> columns() {
        return columns.stream().filter(column -> !column.heading().isBlank()).toList();
    }

    /** Some rows around the headings. */
    List<Proposal.TopRow> top() {
        int from = Math.max(0, headingAt - 3);
        return first.subList(from, Math.min(first.size(), from + TOP));
    }
}
