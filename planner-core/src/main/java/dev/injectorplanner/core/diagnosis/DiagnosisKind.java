package dev.injectorplanner.core.diagnosis;

import dev.injectorplanner.core.fault.FaultSubject;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.RepairWork;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a diagnosis looks for, with the usual order of looking: what is cheap to see and likely first, injectors last. Common
 * practice of the trade, of no single source; procedures and limits are the engine maker's, and go before these.
 */
public enum DiagnosisKind {
    /** Fuel outside: by eye and card, never by hand. */
    LEAK(
            "fuel leak",
            step(
                    "rest",
                    "Engine off, rail bled down",
                    "Wait as the maker's manual says. Clean and dry what is wet.",
                    null),
            step(
                    "filter-housing",
                    "Filter, housing and drain",
                    "By eye and lamp, engine at rest.",
                    RepairWork.FUEL_FILTER),
            step(
                    "supply-line",
                    "Supply lines, tank to pump",
                    "By eye and lamp. Wet joints, chafed hoses.",
                    RepairWork.FUEL_LINE),
            step(
                    "return-line",
                    "Return lines and their joints",
                    "By eye and lamp, at each cylinder.",
                    RepairWork.FUEL_LINE),
            step(
                    "high-pressure-line",
                    "High-pressure lines and rail ends",
                    "Engine idling: eyes covered, a card on a stick along each line. Never by hand.",
                    RepairWork.FUEL_LINE),
            step(
                    "relief-valve",
                    "Pressure relief valve",
                    "By eye and card. Does it pass fuel at idle?",
                    RepairWork.RELIEF_VALVE),
            step(
                    "pump",
                    "High-pressure pump",
                    "By eye and card: flange, shaft seal, fittings.",
                    RepairWork.HIGH_PRESSURE_PUMP),
            step(
                    "oil",
                    "Engine oil",
                    "Level risen, thin, smells of fuel? Then fuel leaks inside, at an injector or the pump.",
                    null)),
    /** Rail or supply pressure off. */
    PRESSURE(
            "rail or supply pressure",
            step("filter", "Fuel filter", "Age, water, pressure difference across it.", RepairWork.FUEL_FILTER),
            step(
                    "supply",
                    "Low-pressure supply",
                    "Pressure before the pump; air in a clear hose; pick-up and lines.",
                    RepairWork.SUPPLY_PUMP),
            step(
                    "return",
                    "Return flow",
                    "All injectors for the same time: one that returns far more than the others loses the pressure.",
                    null),
            step(
                    "relief-valve",
                    "Pressure relief valve",
                    "Does it pass fuel below its opening pressure?",
                    RepairWork.RELIEF_VALVE),
            step("leak", "Leaks", "By eye and card, never by hand.", RepairWork.FUEL_LINE),
            step(
                    "pump",
                    "High-pressure pump and its control valve",
                    "Pressure while cranking and under load, valve's control.",
                    RepairWork.HIGH_PRESSURE_PUMP),
            step(
                    "sensor",
                    "Rail pressure sensor",
                    "Reading at rest; compare with a gauge where the maker allows it.",
                    null),
            step("injectors", "Injectors", "Only now: return flow and balance by cylinder.", null)),
    /** The circuit of an injector: wiring before the injector. */
    CIRCUIT(
            "injector circuit",
            step(
                    "codes",
                    "Codes written down",
                    "Before anything is cleared: which cylinder, open or shorted, active or stored.",
                    null),
            step(
                    "connector",
                    "Connector at the injector",
                    "Batteries off first. Lock, bent pins, oil, corrosion.",
                    RepairWork.CONNECTOR),
            step(
                    "harness",
                    "Harness along its run",
                    "Chafed, burnt, stretched? Move it: does the code come and go?",
                    RepairWork.HARNESS),
            step(
                    "continuity",
                    "Wires to the ECU",
                    "Continuity, short to ground and to the neighbour, ECU unplugged.",
                    RepairWork.HARNESS),
            step(
                    "resistance",
                    "Injector coil",
                    "Resistance against the other cylinders; the maker's figure decides.",
                    null),
            step(
                    "exchange",
                    "Change over with a neighbour",
                    "Only where the maker allows it, codes changed over in the ECU too: does the fault follow the injector?",
                    null));

    private final String words;
    private final List<DiagnosisStep> steps;

    DiagnosisKind(String words, DiagnosisStep... steps) {
        this.words = words;
        this.steps = List.of(steps);
    }

    private static DiagnosisStep step(String key, String title, String how, @Nullable RepairWork repair) {
        return new DiagnosisStep(key, title, how, repair);
    }

    /** What is looked for, in words. */
    public String words() {
        return words;
    }

    /** Where to look, in order. */
    public List<DiagnosisStep> steps() {
        return steps;
    }

    /** Its name in addresses, lower case. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The kind with a name in addresses. */
    public static Optional<DiagnosisKind> find(String key) {
        return List.of(values()).stream().filter(kind -> kind.key().equals(key)).findFirst();
    }

    /** The diagnosis that a fault code asks for; empty where it asks for none of these. */
    public static Optional<DiagnosisKind> of(FaultCode code) {
        FaultSubject subject = code.meaning().subject();
        if (subject == FaultSubject.FUEL_LEAK) {
            return Optional.of(LEAK);
        }
        if (subject == FaultSubject.RAIL_PRESSURE || subject == FaultSubject.SUPPLY_PRESSURE) {
            return Optional.of(PRESSURE);
        }
        return code.electrical() ? Optional.of(CIRCUIT) : Optional.empty();
    }
}
