package dev.injectorplanner.reports.bay;

import java.util.ArrayList;
import java.util.List;

/** What every sheet for a mechanic says. Cautions of the trade: common practice, with no one source. */
public final class Cautions {
    /** Before the work. The first one defers to those who know better. */
    public static final List<String> BEFORE = List.of(
            "The engine maker's manual, local codes and licensed practice come first; torques and limits are theirs.",
            "High-pressure fuel pierces skin: never search for leaks by hand. Let the rail bleed down before opening it.",
            "Batteries off before any connector is pulled. Beware of stored energy. Wear eye protection.",
            "Coolant may be hot and under pressure. Glycol is poisonous: collect it all.",
            "Clean first: blow off, cap every opened port at once, suction the bore before fitting.",
            "No flame, no sparks near fuel. With wheels off the truck is on stands.");

    private static final String CODES = "Calibration codes entered under their cylinders and read back";
    private static final String CAUSE = "Cause recorded with a name: the repair, or no fault found";

    private static final List<String> END = List.of(
            "Stored faults cleared, none left, none new",
            "Leaks checked, engine at rest first",
            "Levels and freeze protection checked",
            "Test run; recheck date agreed");

    private Cautions() {}

    /**
     * After the work, in this order.
     *
     * @param fitted whether injectors are fitted, so that codes must be entered
     * @param diagnosis whether the cause of a safety fault was looked for
     */
    public static List<String> end(boolean fitted, boolean diagnosis) {
        List<String> lines = new ArrayList<>();
        if (diagnosis) {
            lines.add(CAUSE);
        }
        if (fitted) {
            lines.add(CODES);
        }
        lines.addAll(END);
        return lines;
    }
}
