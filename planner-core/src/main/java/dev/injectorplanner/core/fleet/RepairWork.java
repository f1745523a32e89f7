package dev.injectorplanner.core.fleet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is done on a fuel system beside its injectors, in the words of a repair's {@code what}. */
public enum RepairWork {
    HARNESS("injector harness", true, false, "harness", "wiring"),
    CONNECTOR("injector connector", true, false, "connector"),
    FUEL_FILTER("fuel filter", false, true, "fuel filter"),
    SUPPLY_PUMP("fuel supply pump", false, true, "fuel supply pump", "lift pump", "feed pump"),
    HIGH_PRESSURE_PUMP("high-pressure pump", false, true, "high-pressure pump", "high pressure pump"),
    RELIEF_VALVE("pressure relief valve", false, true, "pressure relief valve"),
    FUEL_LINE("fuel line", false, true, "fuel line", "return line", "high-pressure line", "high pressure line"),
    NO_FAULT_FOUND(Repair.NO_FAULT_FOUND, false, false, Repair.NO_FAULT_FOUND);

    /** A connector of a fuel line is no wiring. */
    private static final List<String> OF_FUEL = List.of("fuel", "leak", "line", "rail", "pipe");

    private final String words;
    private final boolean electrical;
    private final boolean fuel;
    private final List<String> signs;

    RepairWork(String words, boolean electrical, boolean fuel, String... signs) {
        this.words = words;
        this.electrical = electrical;
        this.fuel = fuel;
        this.signs = List.of(signs);
    }

    /** As it is written and offered for choice. */
    public String words() {
        return words;
    }

    /** Whether it answers faults of an injector's circuit. */
    boolean electrical() {
        return electrical;
    }

    /** Whether it answers leaks and faults of the fuel's pressure. */
    public boolean fuel() {
        return fuel;
    }

    /**
     * Whether a repair answers faults of an injector's circuit: it names an injector's harness or connector in full, whatever else
     * was done, or wiring that is not of the fuel system.
     */
    static boolean isOfCircuit(Repair repair) {
        String text = repair.what().toLowerCase(Locale.ROOT);
        return text.contains(HARNESS.words)
                || text.contains(CONNECTOR.words)
                || of(repair).filter(RepairWork::electrical).isPresent();
    }

    /** The work that a repair names; empty where it is something else. */
    public static Optional<RepairWork> of(Repair repair) {
        String text = repair.what().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(work -> work.signs.stream().anyMatch(text::contains)
                        || work == SUPPLY_PUMP && text.startsWith("supply pump")) // one of AdBlue is another
                .filter(work -> !work.electrical || OF_FUEL.stream().noneMatch(text::contains))
                .findFirst();
    }
}
