package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.CellText;
import dev.injectorplanner.imports.cell.GroupedHeadings;
import dev.injectorplanner.imports.cell.Heading;
import dev.injectorplanner.imports.propose.Proposal.TopRow;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which of the first rows of a foreign sheet holds the headings, and whether groups of them stand in the row above. */
final class HeadingChoice {
    private static final double MOSTLY = 0.6;
    private static final int LONGEST = 60;

    private final List<TopRow> first;
    private final Map<String, Boolean> named = new HashMap<>();
    private int at;
    private List<String> headings;

    /** @param saidLine line of the headings if a person said so, else 0 */
    HeadingChoice(List<TopRow> first, long saidLine) {
        this.first = first;
        this.at = best(saidLine);
        this.headings = first.get(at).cells();
        if (isOverTwo(at - 1)) {
            take(at - 1);
        } else if (isOverTwo(at)) {
            take(at);
        }
    }

    private void take(int upper) {
        headings = joined(upper);
        at = upper + 1;
    }

    /** Place of the row among the first, from 0; of headings over two rows the lower one. */
    int at() {
        return at;
    }

    List<String> headings() {
        return headings;
    }

    private int best(long saidLine) {
        int best = 0;
        double most = -1;
        for (int i = 0; i < first.size(); i++) {
            if (first.get(i).line() == saidLine) {
                return i;
            }
            double score = score(first.get(i).cells());
            if (score > most + 0.01) {
                most = score;
                best = i;
            }
        }
        return best;
    }

    /** Cells that name a column of some table count, and a little those that are words at all. */
    private double score(List<String> cells) {
        double score = 0;
        for (String cell : cells) {
            String text = CellText.trimmed(cell);
            if (isWord(text)) {
                score += 0.1 + (namesColumn(text) ? 1 : 0);
            }
        }
        return score;
    }

    private static boolean isWord(String text) {
        return !text.isEmpty() && text.length() <= LONGEST && !CellTests.isNumber(text);
    }

    private boolean namesColumn(String heading) {
        return named.computeIfAbsent(heading, each -> new TradeHeading(each).namesColumn());
    }

    private List<String> joined(int upper) {
        return GroupedHeadings.join(
                first.get(upper).cells(), first.get(upper + 1).cells());
    }

    /**
     * Whether a row and the next one are headings together: the lower one holds words of headings, and would lose something
     * alone: a column that only the upper row names, the group that tells two equal headings apart, or what a unit is of.
     */
    private boolean isOverTwo(int upper) {
        if (upper < 0
                || upper + 1 >= first.size()
                || first.get(upper + 1).line() != first.get(upper).line() + 1) {
            return false;
        }
        List<String> above = first.get(upper).cells();
        List<String> below = first.get(upper + 1).cells();
        List<String> both = joined(upper);
        long filled = below.stream()
                .map(CellText::trimmed)
                .filter(cell -> !cell.isEmpty())
                .count();
        long words = 0;
        for (int i = 0; i < below.size(); i++) {
            String cell = CellText.trimmed(below.get(i));
            words += isWord(cell) && (TradeWords.isUnitOrHours(cell) || namesColumn(cell) || namesColumn(both.get(i)))
                    ? 1
                    : 0;
        }
        return filled > 0
                && words >= MOSTLY * filled
                && above.stream().noneMatch(cell -> CellTests.isNumber(CellText.trimmed(cell)))
                && losesAlone(above, below, both);
    }

    private boolean losesAlone(List<String> above, List<String> below, List<String> both) {
        Map<String, String> groups = new HashMap<>();
        for (int i = 0; i < both.size(); i++) {
            String upper = i < above.size() ? CellText.trimmed(above.get(i)) : "";
            String lower = i < below.size() ? CellText.trimmed(below.get(i)) : "";
            String group = GroupedHeadings.above(both.get(i));
            String other = lower.isEmpty() ? group : groups.getOrDefault(Heading.plain(lower), group);
            boolean only = lower.isEmpty() && namesColumn(upper);
            boolean unitOf = TradeWords.isUnitOrHours(lower) && namesColumn(group);
            if (only || unitOf || !other.equals(group)) {
                return true;
            }
            groups.put(Heading.plain(lower), group);
        }
        return false;
    }
}
