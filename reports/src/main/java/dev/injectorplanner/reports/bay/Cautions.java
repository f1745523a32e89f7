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

    /** Steps of an injector test. Common practice; how and how long defers to the engine maker's manual. */
    public static final List<String> TEST = List.of(
            "Connect the scan tool. Fix any active wiring or fuel-pressure code first.",
            "Engine at working temperature, no load: write down its state beside the readings.",
            "Balance: read each cylinder's correction at a steady idle.",
            "Return flow: measure each injector for the same time, engine as the maker's manual says. Catch the fuel in a container. Never feel for leaks by hand.",
            "Contribution, where the scan tool offers it: read each cylinder.");

    private static final String BAGGED = "Old injectors bagged and tagged with truck and cylinder, for their cores";
    private static final String CODES = "Calibration codes entered under their cylinders and read back";
    private static final String CAUSE = "Cause recorded with a name: the repair, or no fault found";

    private static final List<String> END = List.of(
            "Stored faults cleared, none left, none new",
            "Leaks checked, engine at rest first",
            "Levels and freeze protection checked",
            "Test run; recheck date agreed");

    private static final List<String> END_OF_TEST = List.of(
            "Test lines off, return lines and caps back on",
            "Leaks checked by eye and card, engine at rest first",
            "Stored faults read: none new");

    private Cautions() {}

    /**
     * After the work, in this order.
     *
     * @param fitted whether injectors are fitted, so that codes must be entered
     * @param diagnosis whether the cause of a safety fault was looked for
     * @param testOnly whether injectors were tested and nothing else: no code was touched
     */
    public static List<String> end(boolean fitted, boolean diagnosis, boolean testOnly) {
        if (testOnly && !diagnosis) {
            return END_OF_TEST;
        }
        List<String> lines = new ArrayList<>();
        if (diagnosis) {
            lines.add(CAUSE);
        }
        if (fitted) {
            lines.add(BAGGED);
            lines.add(CODES);
        }
        lines.addAll(END);
        return lines;
    }
}
