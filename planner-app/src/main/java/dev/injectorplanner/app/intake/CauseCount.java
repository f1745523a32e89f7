package dev.injectorplanner.app.intake;

import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Counts the rows of one cause, with the first places and the most frequent values. */
final class CauseCount {
    private static final int PLACES = 3;
    private static final int VALUES_SHOWN = 5;
    private static final int VALUES_KEPT = 1_000;

    private final String file;
    private final @Nullable String sheet;
    private final String table;
    private final String column;
    private final String reason;
    private final List<String> places = new ArrayList<>();
    private final Map<String, Long> values = new LinkedHashMap<>();
    private final Map<String, Long> takesWith = new TreeMap<>();
    private String fix;
    private long rows;

    CauseCount(Table<?> table, Complaint first) {
        this(first.file(), first.sheet(), table.name(), first.column(), first.reason(), first.fix());
    }

    private CauseCount(String file, @Nullable String sheet, String table, String column, String reason, String fix) {
        this.file = file;
        this.sheet = sheet;
        this.table = table;
        this.column = column;
        this.reason = reason;
        this.fix = fix;
    }

    static CauseCount ofFile(FileRefusedException refusal) {
        return new CauseCount(refusal.file(), null, "", "", refusal.reason(), refusal.fix());
    }

    void add(Complaint complaint) {
        rows++;
        if (places.size() < PLACES) {
            places.add(place(complaint));
        }
        if (values.size() < VALUES_KEPT || values.containsKey(complaint.value())) {
            values.merge(complaint.value(), 1L, Long::sum);
        }
        fix = common(fix, complaint.fix());
    }

    private static String place(Complaint complaint) {
        String cell = complaint.cell();
        return cell != null ? cell : (complaint.sheet() == null ? "line " : "row ") + complaint.line();
    }

    /** What two fixes begin with in common, up to a break in the sentence; the first where that is nothing. */
    private static String common(String first, String second) {
        if (first.equals(second)) {
            return first;
        }
        int same = 0;
        int end = 0;
        while (same < first.length() && same < second.length() && first.charAt(same) == second.charAt(same)) {
            if (",:;(".indexOf(first.charAt(same)) >= 0) {
                end = same;
            }
            same++;
        }
        if (same == first.length() || same == second.length()) {
            return first.substring(0, same);
        }
        return end > 0 ? first.substring(0, end) : first;
    }

    /** What settles a cause of many rows at once. */
    private String forAll() {
        if (rows < 2) {
            return "";
        }
        if (reason.startsWith("can be read in two ways")) {
            return "; for all of them at once, match the file, or load it with "
                    + (values.keySet().stream().anyMatch(value -> value.matches("[0-9.,+-]+[.,][0-9]{3}"))
                            ? "--numbers 1,234.5 or --numbers 1.234,5"
                            : "--dates dmy or --dates mdy");
        }
        boolean words = reason.equals("is not a number") || reason.equals("is not a date");
        return words
                        && values.keySet().stream()
                                .noneMatch(value -> value.chars().anyMatch(Character::isDigit))
                ? "; if such words mean empty, say so once by matching the file"
                : "";
    }

    void takeWith(String dependantTable) {
        takesWith.merge(dependantTable, 1L, Long::sum);
    }

    /** Where it is, for a row that was refused for it: {@code engine_families.csv, line 3}. */
    String where() {
        return places.isEmpty()
                ? file
                : file + (sheet == null ? "" : ", sheet \"" + sheet + "\"") + ", " + places.get(0);
    }

    Cause cause() {
        List<Cause.Value> frequent = values.entrySet().stream()
                .map(value -> new Cause.Value(value.getKey(), value.getValue()))
                .sorted(Comparator.comparingLong(Cause.Value::rows).reversed())
                .limit(VALUES_SHOWN)
                .toList();
        return new Cause(
                file,
                sheet,
                table,
                column,
                reason,
                fix + forAll(),
                rows,
                places,
                frequent,
                Math.max(0, values.size() - frequent.size()),
                Map.copyOf(takesWith));
    }
}
