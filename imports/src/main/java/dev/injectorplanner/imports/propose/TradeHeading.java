package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.GroupedHeadings;
import dev.injectorplanner.imports.cell.Heading;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A heading of a foreign file, taken apart once and held against the names that offices give to columns. */
final class TradeHeading {
    /** What names a column, and not only holds its name among other words. */
    static final double NAMED = 0.9;

    private static final Set<String> METERS =
            Set.of("", "odometer", "meter", "meterreading", "engine", "eng", "reading", "run", "running");
    private static final double BELOW_A_GROUP = 0.85;

    private final String plain;
    private final String inWords;
    private final String withoutUnit;
    private final boolean hours;
    private final @Nullable TradeHeading below;

    TradeHeading(String heading) {
        List<String> words = TradeWords.words(heading);
        plain = Heading.plain(heading);
        inWords = " " + String.join(" ", words) + " ";
        hours = words.stream().anyMatch(TradeWords::isHours);
        StringBuilder kept = new StringBuilder();
        words.stream().filter(word -> !TradeWords.isUnitOrHours(word)).forEach(kept::append);
        withoutUnit = kept.toString();
        String lower = GroupedHeadings.below(heading);
        below = lower.equals(heading) || TradeWords.isUnitOrHours(lower) ? null : new TradeHeading(lower);
    }

    /** How well it names a column, 0 to 1, by its words alone; below a group by its own words nearly as well. */
    double likeness(Table<?> table, Column<?> column) {
        double whole = ofWhole(table, column);
        return below == null ? whole : Math.max(whole, BELOW_A_GROUP * below.likeness(table, column));
    }

    private double ofWhole(Table<?> table, Column<?> column) {
        if (plain.isEmpty() || (hours && column.units().equals(ColumnUnit.DISTANCE))) {
            return 0; // a meter that counts hours is no odometer
        }
        if (TradeWords.plainName(column.base()).equals(plain)
                || column.headings().stream()
                        .anyMatch(name -> TradeWords.plainName(name).equals(plain))) {
            return 1;
        }
        boolean hoursOfEngine = hours && column.base().endsWith("engine_hours");
        if (hoursOfEngine && METERS.contains(withoutUnit)) {
            return NAMED;
        }
        String bare = column.units().isEmpty() && !hoursOfEngine ? plain : withoutUnit;
        double best = 0;
        for (String name : TradeWords.names(table, column)) {
            String word = TradeWords.plainName(name);
            if (word.equals(plain)) {
                return 0.95;
            }
            if (!bare.isEmpty() && word.equals(bare)) {
                best = Math.max(best, NAMED);
            } else if (TradeWords.holds(inWords, name)) {
                best = Math.max(best, 0.5 + 0.3 * word.length() / plain.length());
            }
        }
        return best;
    }

    /** Whether it names a column of some table. */
    boolean namesColumn() {
        for (Table<?> table : Tables.ALL) {
            for (Column<?> column : table.columns()) {
                if (likeness(table, column) >= NAMED) {
                    return true;
                }
            }
        }
        return false;
    }
}
