package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import java.math.BigDecimal;
import java.util.List;

/**
 * Three invented engine families: a V8 whose rear cylinders are hard to reach, an inline six, an inline four. Steps and
 * hours are plausible and nobody's; the engine maker's manual goes before them.
 */
final class MadeUpEngines {
    static final String V8 = "V8-140";
    static final String SIX = "L6-110";
    static final String FOUR = "L4-050";

    private static final List<Integer> ALL = List.of();
    private static final String CLEAN = "blow the area off first, cap every opened port at once";
    private static final String HOT = "coolant may be hot and under pressure; glycol is poisonous, collect it";
    private static final String RAIL = "let the rail bleed down; never search for leaks by hand";

    private MadeUpEngines() {}

    static List<EngineFamily> families() {
        return List.of(
                new EngineFamily(
                        V8,
                        8,
                        List.of(new Bank("left", List.of(1, 3, 5, 7)), new Bank("right", List.of(2, 4, 6, 8))),
                        List.of(1, 5, 4, 2, 6, 3, 7, 8),
                        0.6,
                        52,
                        50,
                        MadeUpParts.INJECTOR_V8,
                        new BigDecimal("5200")),
                new EngineFamily(
                        SIX,
                        6,
                        List.of(new Bank("inline", List.of(1, 2, 3, 4, 5, 6))),
                        List.of(1, 5, 3, 6, 2, 4),
                        0.5,
                        38,
                        50,
                        MadeUpParts.INJECTOR_SIX,
                        new BigDecimal("4300")),
                new EngineFamily(
                        FOUR,
                        4,
                        List.of(new Bank("inline", List.of(1, 2, 3, 4))),
                        List.of(1, 3, 4, 2),
                        0.4,
                        18,
                        45,
                        MadeUpParts.INJECTOR_FOUR,
                        new BigDecimal("2100")));
    }

    static List<AccessStep> access() {
        return List.of(
                step(V8, "batteries off", 1, 0.2, ALL, 0, "batteries off before any connector"),
                step(V8, "coolant drained below the intake", 2, 0.5, ALL, 35, HOT),
                step(V8, "charge pipes and intake off", 3, 1.7, ALL, 0, CLEAN),
                step(V8, "left rocker cover and fuel pipes off", 4, 1.0, List.of(1, 3, 5, 7), 0, RAIL),
                step(V8, "right rocker cover and fuel pipes off", 5, 0.9, List.of(2, 4, 6, 8), 0, RAIL),
                step(V8, "exhaust gas cooler off", 6, 2.1, List.of(7, 8), 60, HOT),
                step(V8, "rear cab mounts down", 7, 1.4, List.of(8), 0, "support the cab before loosening"),
                step(SIX, "batteries off", 1, 0.2, ALL, 0, "batteries off before any connector"),
                step(SIX, "engine covers and breather off", 2, 0.6, ALL, 0, CLEAN),
                step(SIX, "rocker cover and fuel pipes off", 3, 1.1, ALL, 0, RAIL),
                step(SIX, "coolant header pipe off", 4, 0.8, List.of(5, 6), 20, HOT),
                step(FOUR, "batteries off", 1, 0.2, ALL, 0, "batteries off before any connector"),
                step(FOUR, "seat box and engine cover off", 2, 0.7, ALL, 0, CLEAN),
                step(FOUR, "fuel pipes and return rail off", 3, 0.5, ALL, 0, RAIL));
    }

    private static AccessStep step(
            String family,
            String step,
            int order,
            double hours,
            List<Integer> cylinders,
            double drainsPercent,
            String cautions) {
        return new AccessStep(family, step, order, hours, cylinders, drainsPercent, cautions);
    }

    static List<EngineUse> uses() {
        return List.of(
                new EngineUse(V8, 0.35, "long haul", 2_350, 62, 330_000, false),
                new EngineUse(SIX, 0.4, "regional", 1_750, 54, 350_000, false),
                new EngineUse(FOUR, 0.25, "town", 900, 33, 230_000, true));
    }

    static List<IntervalTask> intervals() {
        return List.of(
                new IntervalTask(V8, "valve clearances", 240_000.0, null, null, 3.5, true),
                new IntervalTask(SIX, "valve clearances", 240_000.0, null, null, 2.5, true),
                new IntervalTask(SIX, "high-pressure pump check", null, null, 36, 1.0, true),
                new IntervalTask(FOUR, "timing drive", null, 6_000.0, null, 6.0, false));
    }

    static List<Rule> rules() {
        return List.of(
                new Rule(null, RuleKind.FAULTS, 3, 30),
                new Rule(V8, RuleKind.DISTANCE_KM, 300_000, null),
                new Rule(SIX, RuleKind.DISTANCE_KM, 310_000, null),
                new Rule(FOUR, RuleKind.DISTANCE_KM, 200_000, null),
                new Rule(null, RuleKind.BALANCE, 4, 120),
                new Rule(V8, RuleKind.ENGINE_HOURS, 5_000, null));
    }
}
