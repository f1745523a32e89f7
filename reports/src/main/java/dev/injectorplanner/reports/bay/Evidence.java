package dev.injectorplanner.reports.bay;

import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.units.SiteForm.DateForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.workbook.Words;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * What speaks for a visit, the strongest first and nothing left out: what was seen at the truck before what its age says. Equal
 * remarks of several cylinders are one line.
 */
final class Evidence {
    private static final Comparator<DueItem> STRONGEST = Comparator.comparingInt(Evidence::rank)
            .thenComparingDouble(Evidence::lessLikely)
            .thenComparing(DueItem::by);

    private Evidence() {}

    /** Safety, faults, tests that ask for a new one, tests that ask for another test, chances, limits of age, the rest. */
    private static int rank(DueItem item) {
        return switch (item.kind()) {
            case SAFETY -> 0;
            case FAULTS -> item.action() == DueAction.REPLACE ? 1 : 3;
            case BALANCE, RETURN_FLOW -> item.action() == DueAction.REPLACE ? 2 : 3;
            case RISK -> 4;
            case DISTANCE_KM, ENGINE_HOURS, AGE_MONTHS -> 5;
            case WARRANTY -> 6;
            case INSPECTION -> 7;
            case INTERVAL -> 8;
            case COST -> 9;
        };
    }

    /** The less likely a failure, the later: below 0, and 0 where no chance is known. */
    private static double lessLikely(DueItem item) {
        return item.chance12() == null ? 0 : -item.chance12();
    }

    /** A remark with the cylinders it is said of. */
    private record Line(String other, String remark, TreeSet<Integer> cylinders) {
        String words() {
            String subject = cylinders.isEmpty()
                    ? other
                    : (cylinders.size() == 1 ? "Cylinder " : "Cylinders ") + Words.cylinders(List.copyOf(cylinders));
            return subject + ": " + remark;
        }
    }

    /** Lines, such as {@code Cylinder 3: 4 faults of the cylinder in the last 30 days (limit 3 in 30 days, site rule)}. */
    static List<String> of(List<DueItem> dueItems, SiteUnits units) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (DueItem item : dueItems.stream().sorted(STRONGEST).toList()) {
            String remark = remark(item, units);
            Integer cylinder = item.cylinder();
            String task = item.task();
            String other = cylinder != null ? "" : task != null ? RefitWords.capital(task) : "Truck";
            Line line = lines.computeIfAbsent(other + "\n" + remark, key -> new Line(other, remark, new TreeSet<>()));
            if (cylinder != null) {
                line.cylinders().add(cylinder);
            }
        }
        return lines.values().stream().map(Line::words).toList();
    }

    private static String remark(DueItem item, SiteUnits units) {
        String evidence = DateForm.WORDS.sentence(units.sentence(item.evidence()));
        if (item.kind() == DueKind.COST) {
            return evidence + " (worth doing while it's open)";
        }
        String limit = DateForm.WORDS.sentence(units.sentence(item.limit()));
        if (item.kind() == DueKind.INSPECTION) { // what it is worth and costs, not a limit of anybody
            return evidence + " (" + limit + ")";
        }
        boolean figure = !limit.isEmpty() && Character.isDigit(limit.charAt(0));
        return evidence + " (" + (figure ? "limit " : "") + limit + ", " + item.limitSource() + ")";
    }
}
