package dev.injectorplanner.imports.cell;

import java.util.ArrayList;
import java.util.List;

/** Headings over two rows: groups above, such as Odometer over km and date. */
public final class GroupedHeadings {
    /** Stands between a group and the heading below it. */
    public static final String BETWEEN = " / ";

    private GroupedHeadings() {}

    /**
     * One heading a column: its group, as far as one reaches, and the heading below. A column that only the upper row names, as
     * merged cells do, has that name.
     *
     * @param above cells of the upper row; a group stands in the first cell that it covers
     * @param below cells of the lower row
     */
    public static List<String> join(List<String> above, List<String> below) {
        List<String> joined = new ArrayList<>();
        String group = "";
        for (int at = 0; at < Math.max(above.size(), below.size()); at++) {
            String upper = cell(above, at);
            String lower = cell(below, at);
            if (lower.isEmpty()) {
                group = "";
                joined.add(upper);
                continue;
            }
            group = upper.isEmpty() ? group : upper;
            boolean alone = group.isEmpty() || Heading.plain(group).equals(Heading.plain(lower));
            joined.add(alone ? lower : group + BETWEEN + lower);
        }
        return joined;
    }

    private static String cell(List<String> cells, int at) {
        return at < cells.size() ? CellText.trimmed(cells.get(at)).replaceAll("\\s+", " ") : "";
    }

    /** The heading below the group, or the heading itself where there is none. */
    public static String below(String heading) {
        int between = heading.lastIndexOf(BETWEEN);
        return between < 0 ? heading : heading.substring(between + BETWEEN.length());
    }

    /** The group above a heading, or empty. */
    public static String above(String heading) {
        int between = heading.lastIndexOf(BETWEEN);
        return between < 0 ? "" : heading.substring(0, between);
    }
}
