package dev.injectorplanner.reports.testkit;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;

/** One depot, three trucks with a V8, an injector with core and warranty, seals, clips that break, little on the stock. */
public final class SmallFleet {
    public static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    public static final String DEPOT = "North";
    public static final String V8 = "V8";
    public static final String INJECTOR = "INJ-8";

    private SmallFleet() {}

    public static FleetSnapshot snapshot() {
        return new FleetSnapshot(
                List.of(depot()),
                List.of(),
                List.of(family()),
                List.of(
                        new AccessStep(V8, "covers off", 1, 0.5, List.of(), 0, "blow off first"),
                        new AccessStep(V8, "intake off", 2, 2.5, List.of(), 40, "hot coolant")),
                List.of(),
                List.of(truck("T1", 1), truck("+T2", 2), truck("T3", 3)),
                injectors(),
                List.of(),
                List.of(new Fault("T1", noon(TODAY.minusDays(42)), new FaultCode("SPN 652 FMI 5"), null, 3, null)),
                List.of(new CylinderTest(
                        "T1", 2, noon(TODAY.minusDays(41)), TestKind.BALANCE, 4.5, "mm3/stroke", "warm idle")),
                List.of(
                        part(INJECTOR, "injector", PartKind.INJECTOR, "480", "120", 60, 10, 21, 1, 12, 100_000),
                        part("SEAL", "-seal, copper", PartKind.SEAL, "1.25", "0", 0, 2, 4, 10, 0, 0),
                        part("CLIP", "return hose clip", PartKind.FITTING, "0.85", "0", 0, 4, 8, 5, 0, 0)),
                List.of(
                        new JobPart(V8, Per.CYLINDER, null, "SEAL", 1, 1),
                        new JobPart(V8, Per.CYLINDER, null, "CLIP", 2, 0.3)),
                List.of(new StockLine(DEPOT, INJECTOR, 2), new StockLine(DEPOT, "CLIP", 3)),
                List.of(new PurchaseLine("P-7", INJECTOR, DEPOT, 1, TODAY.plusDays(9), null)),
                List.of(),
                List.of(),
                List.of());
    }

    private static Depot depot() {
        return new Depot(
                DEPOT,
                "North yard",
                ZoneId.of("Europe/Berlin"),
                2,
                16,
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                new BigDecimal("60"),
                new BigDecimal("90"),
                8);
    }

    private static EngineFamily family() {
        return new EngineFamily(
                V8,
                8,
                List.of(new Bank("left", List.of(1, 3, 5, 7)), new Bank("right", List.of(2, 4, 6, 8))),
                List.of(1, 5, 4, 2, 6, 3, 7, 8),
                0.4,
                50,
                45,
                INJECTOR,
                new BigDecimal("4200"));
    }

    private static Truck truck(String name, int number) {
        return new Truck(
                name,
                new Vin("W0T00000000000%03d".formatted(number)),
                DEPOT,
                V8,
                null,
                LocalDate.of(2020, 1, 10),
                null,
                null);
    }

    /** Cylinder 2 of T1 failed inside its warranty and was replaced by a reman, whose core is owed. */
    private static List<FittedInjector> injectors() {
        LocalDate out = TODAY.minusDays(40);
        return List.of(
                new FittedInjector(
                        "T1",
                        2,
                        INJECTOR,
                        "S-1",
                        null,
                        Origin.NEW,
                        out.minusMonths(7),
                        200_000.0,
                        null,
                        out,
                        261_500.0,
                        null,
                        Found.FAILED),
                new FittedInjector(
                        "T1", 2, INJECTOR, "R-9", null, Origin.REMAN, out, 261_500.0, null, null, null, null, null));
    }

    private static Part part(
            String number,
            String description,
            PartKind kind,
            String price,
            String deposit,
            int coreDays,
            int lead,
            int leadMax,
            int pack,
            int months,
            double km) {
        return new Part(
                number,
                description,
                kind,
                kind == PartKind.INJECTOR ? "Supplier One" : "Supplier Two",
                new BigDecimal(price),
                new BigDecimal(deposit),
                coreDays,
                lead,
                leadMax,
                pack,
                0,
                months,
                km,
                null);
    }

    private static Instant noon(LocalDate day) {
        return Instant.ofEpochSecond(day.toEpochDay() * 86_400 + 43_200);
    }
}
