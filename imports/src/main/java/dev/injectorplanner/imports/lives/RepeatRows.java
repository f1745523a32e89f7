package dev.injectorplanner.imports.lives;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.RepeatHistory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Rows of repeat failures gathered by unit; whether they hang together is judged when all are read. */
final class RepeatRows {
    private final Map<String, Unit> units = new LinkedHashMap<>();

    private static final class Unit {
        private final List<Long> eventLines = new ArrayList<>();
        private final NumberColumn events = new NumberColumn();
        private double end = Double.NaN;
    }

    void add(CsvRow row) {
        String name = row.filled("unit");
        if (name.length() > Require.LONGEST_NAME) {
            row.complain("unit", "is too long for a name", "shorten it, or check for a missing comma");
        }
        double age = row.positive("age");
        Unit unit = units.computeIfAbsent(name, key -> new Unit());
        String what = row.text("what").toLowerCase(Locale.ROOT);
        if (what.equals("event")) {
            unit.eventLines.add(row.line());
            unit.events.add(age);
        } else if (!what.equals("end")) {
            row.complain("what", "is neither event nor end", "enter event for a failure, end for when last seen");
        } else if (!Double.isNaN(unit.end)) {
            row.complain("what", "is the second end of unit " + name, "keep the row of the day it was last seen");
        } else {
            unit.end = age;
        }
    }

    List<RepeatHistory> histories(CsvTable table) throws LivesRefusedException {
        units.forEach((name, unit) -> judge(table, name, unit));
        table.refuseIfAny();
        List<RepeatHistory> histories = new ArrayList<>();
        units.forEach((name, unit) -> histories.add(new RepeatHistory(name, unit.end, unit.events.toArray())));
        return histories;
    }

    private static void judge(CsvTable table, String name, Unit unit) {
        if (Double.isNaN(unit.end)) {
            table.complain(table.name() + ": unit " + name
                    + " has no end. Fix: add a row with what = end and its age when last seen.");
            return;
        }
        double[] ages = unit.events.toArray();
        for (int i = 0; i < ages.length; i++) {
            if (ages[i] > unit.end) {
                table.complain(table.name() + ", line " + unit.eventLines.get(i) + ": the event of unit " + name
                        + " lies beyond its end. Fix: correct the age of the event or of the end.");
            }
        }
    }
}
