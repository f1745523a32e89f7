package dev.injectorplanner.core.replay.scenario;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.Per;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;

/** The invented site of the named scenarios: one depot, a V8 with hard rear cylinders, an inline six. */
final class ReplaySite {
    static final String V8 = "V8";
    static final String SIX = "L6";

    private static final String V8_INJECTOR = "INJ-V8";
    private static final String SIX_INJECTOR = "INJ-L6";
    private static final BigDecimal ROAD_FAILURE = new BigDecimal("4500");
    private static final List<Integer> ALL = List.of();

    private ReplaySite() {}

    static SiteTables tables() {
        return new SiteTables(
                List.of(depot()), List.of(), families(), access(), parts(), jobParts(), List.of(), List.of());
    }

    private static Depot depot() {
        return new Depot(
                "Yard",
                "Yard",
                ZoneId.of("UTC"),
                3,
                6,
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                new BigDecimal("85"),
                new BigDecimal("127.50"),
                8);
    }

    private static List<EngineFamily> families() {
        return List.of(
                new EngineFamily(
                        V8,
                        8,
                        List.of(new Bank("left", List.of(1, 3, 5, 7)), new Bank("right", List.of(2, 4, 6, 8))),
                        List.of(1, 5, 4, 2, 6, 3, 7, 8),
                        0.6,
                        52,
                        50,
                        V8_INJECTOR,
                        ROAD_FAILURE),
                new EngineFamily(
                        SIX,
                        6,
                        List.of(new Bank("inline", List.of(1, 2, 3, 4, 5, 6))),
                        List.of(1, 5, 3, 6, 2, 4),
                        0.5,
                        38,
                        50,
                        SIX_INJECTOR,
                        ROAD_FAILURE));
    }

    private static List<AccessStep> access() {
        return List.of(
                step(V8, "batteries off", 1, 0.2, ALL, 0),
                step(V8, "coolant drained, intake off", 2, 2.2, ALL, 35),
                step(V8, "left rocker cover off", 3, 1.0, List.of(1, 3, 5, 7), 0),
                step(V8, "right rocker cover off", 4, 0.9, List.of(2, 4, 6, 8), 0),
                step(V8, "exhaust gas cooler off", 5, 2.1, List.of(7, 8), 60),
                step(SIX, "batteries off", 1, 0.2, ALL, 0),
                step(SIX, "covers and rocker cover off", 2, 1.7, ALL, 0),
                step(SIX, "coolant header pipe off", 3, 0.8, List.of(5, 6), 20));
    }

    private static AccessStep step(
            String family, String step, int order, double hours, List<Integer> cylinders, double drains) {
        return new AccessStep(family, step, order, hours, cylinders, drains, "");
    }

    private static List<Part> parts() {
        return List.of(
                part(V8_INJECTOR, PartKind.INJECTOR, "612", "180", 12, 24),
                part(SIX_INJECTOR, PartKind.INJECTOR, "485", "140", 9, 18),
                part("SEAL-KIT", PartKind.SEAL, "21", "0", 4, 8),
                part("GASKET", PartKind.SEAL, "31", "0", 4, 8));
    }

    private static Part part(String part, PartKind kind, String price, String deposit, int leadDays, int leadDaysMax) {
        return new Part(
                part,
                part,
                kind,
                "Supplier",
                new BigDecimal(price),
                new BigDecimal(deposit),
                deposit.equals("0") ? 0 : 45,
                leadDays,
                leadDaysMax,
                1,
                0,
                0,
                0,
                null);
    }

    private static List<JobPart> jobParts() {
        return List.of(
                new JobPart(V8, Per.CYLINDER, null, "SEAL-KIT", 1, 1),
                new JobPart(V8, Per.BANK, null, "GASKET", 1, 1),
                new JobPart(SIX, Per.CYLINDER, null, "SEAL-KIT", 1, 1),
                new JobPart(SIX, Per.BANK, null, "GASKET", 1, 1));
    }
}
