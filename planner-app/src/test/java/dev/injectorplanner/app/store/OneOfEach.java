package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.ShopRecords;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.fleet.Vin;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;

/** A tiny fleet: at least one row of each table, with every value that may be missing once there and once not. */
public final class OneOfEach {
    public static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    public static final Instant MOMENT = Instant.parse("2026-02-27T05:30:00Z");

    private OneOfEach() {}

    public static FleetSnapshot fleet() {
        return new FleetSnapshot(
                List.of(new Depot(
                        "North",
                        "North yard",
                        ZoneId.of("Europe/Riga"),
                        2,
                        24,
                        Set.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                        new BigDecimal("78.50"),
                        new BigDecimal("110"),
                        6.5,
                        DAY.minusYears(4))),
                List.of(new CapacityOverride("North", DAY, 0, 0)),
                List.of(family()),
                List.of(
                        new AccessStep("Four", "coolant down", 1, 0.75, List.of(), 60, "hot coolant"),
                        new AccessStep("Four", "cowl", 2, 1.5, List.of(3, 4), 0, "")),
                List.of(new DutyGroup("long haul", 1, new BigDecimal("640"))),
                List.of(
                        new Truck(
                                "T-1",
                                new Vin("1M8GDM9AXKP042788"),
                                "North",
                                "Four",
                                "long haul",
                                DAY.minusYears(3),
                                null,
                                DAY.plusMonths(4),
                                DAY.minusYears(2)),
                        new Truck(
                                "T-2",
                                new Vin("WDB12345678901234"),
                                "North",
                                "Four",
                                null,
                                DAY.minusYears(5),
                                DAY.plusYears(1),
                                null)),
                List.of(
                        new FittedInjector(
                                "T-1",
                                1,
                                "INJ-4R",
                                "S100",
                                "AB12",
                                Origin.REMAN,
                                DAY.minusYears(2),
                                10_000.5,
                                120.25,
                                DAY.minusYears(1),
                                90_000.0,
                                1_500.0,
                                Found.FAILED),
                        new FittedInjector(
                                "T-1",
                                1,
                                "INJ-4R",
                                "S101",
                                "AB13",
                                Origin.REMAN,
                                DAY.minusYears(1),
                                null,
                                null,
                                DAY.minusYears(1),
                                null,
                                null,
                                Found.FAILED),
                        new FittedInjector(
                                "T-1",
                                1,
                                "INJ-4R",
                                null,
                                null,
                                Origin.NEW,
                                DAY.minusYears(1),
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                2),
                        new FittedInjector(
                                "T-1",
                                2,
                                "INJ-4R",
                                null,
                                null,
                                Origin.UNKNOWN,
                                FittedInjector.BEFORE_RECORDS,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null)),
                List.of(
                        new Reading("T-1", MOMENT, 123_456.7, null, false),
                        new Reading("T-1", MOMENT.plusSeconds(3_600), null, 2_000.5, true)),
                List.of(
                        new Fault("T-1", MOMENT, new FaultCode("SPN 651 FMI 5"), null, 3, 123_000.0),
                        new Fault("T-1", MOMENT, new FaultCode("P0087"), null, 1, null),
                        new Fault(
                                "T-1",
                                MOMENT.plusSeconds(60),
                                new FaultCode("SPN 652 FMI 5"),
                                null,
                                2,
                                null,
                                MOMENT.plusSeconds(600))),
                List.of(new CylinderTest("T-1", 2, MOMENT, TestKind.BALANCE, -3.25, "mm3/stroke", "warm idle")),
                List.of(
                        new Part(
                                "INJ-4R",
                                "injector, reman",
                                PartKind.INJECTOR,
                                "Parts & Sons",
                                new BigDecimal("410"),
                                new BigDecimal("120"),
                                30,
                                10,
                                15,
                                1,
                                0,
                                12,
                                100_000,
                                "[0-9A-Z]{4}"),
                        new Part(
                                "SEAL-1",
                                "",
                                PartKind.SEAL,
                                "Parts & Sons",
                                new BigDecimal("2.125"),
                                BigDecimal.ZERO,
                                0,
                                2,
                                4,
                                10,
                                20,
                                0,
                                0,
                                null)),
                List.of(
                        new JobPart("Four", Per.CYLINDER, null, "SEAL-1", 1, 1),
                        new JobPart("Four", Per.STEP, "cowl", "SEAL-1", 2, 0.25),
                        new JobPart("Four", Per.TASK, null, "SEAL-1", 1, 1, "fuel filter")),
                List.of(new StockLine("North", "SEAL-1", 7)),
                List.of(
                        new PurchaseLine("PO-7", "SEAL-1", "North", 20, DAY.plusDays(9), null),
                        new PurchaseLine(
                                "PO-8",
                                "SEAL-1",
                                "North",
                                10,
                                DAY.plusDays(2),
                                null,
                                DAY.plusDays(5),
                                4,
                                new BigDecimal("2.35"))),
                List.of(new AwayWindow("T-2", DAY, DAY.plusDays(12), "harvest")),
                List.of(new IntervalTask("Four", "fuel filter", 40_000.0, null, 12, 0.5, true)),
                List.of(new Rule(null, RuleKind.FAULTS, 3, 30), new Rule("Four", RuleKind.DISTANCE_KM, 300_000, null)),
                new ShopRecords(
                        List.of(
                                new DepotShift(
                                        "North",
                                        DayOfWeek.MONDAY,
                                        LocalTime.of(6, 0),
                                        LocalTime.of(14, 30),
                                        LocalTime.of(10, 0),
                                        LocalTime.of(10, 30)),
                                new DepotShift(
                                        "North",
                                        DayOfWeek.FRIDAY,
                                        LocalTime.of(6, 0),
                                        LocalTime.of(12, 0),
                                        null,
                                        null)),
                        List.of(
                                new Repair(
                                        "T-1",
                                        DAY.minusDays(2),
                                        123_400.0,
                                        "fuel line replaced",
                                        2.5,
                                        "no leak left",
                                        "Kim"),
                                new Repair("T-2", DAY, null, Repair.NO_FAULT_FOUND, null, "", "Kim")),
                        List.of(),
                        List.of(new TaskDone("T-1", "fuel filter", DAY.minusMonths(3), 100_000.5, null)),
                        List.of(new FailureAnswer("INJ-4R", FailureAnswer.Answer.NOT_RECORDED, DAY, "Kim")),
                        List.of(),
                        List.of(
                                new UnitReturn(
                                        UnitReturn.What.CORE,
                                        "T-1",
                                        2,
                                        DAY.minusDays(70),
                                        "RN-7",
                                        DAY.minusDays(40),
                                        "Kim",
                                        new BigDecimal("120.00"),
                                        DAY.minusDays(9),
                                        "Lee",
                                        new BigDecimal("95.50"),
                                        "tip corroded"),
                                new UnitReturn(
                                        UnitReturn.What.CLAIM,
                                        "T-2",
                                        3,
                                        DAY.minusDays(200),
                                        "CL-3",
                                        DAY.minusDays(3),
                                        "Kim",
                                        new BigDecimal("480"),
                                        null,
                                        null,
                                        null,
                                        ""))));
    }

    static EngineFamily family() {
        return new EngineFamily(
                "Four",
                4,
                List.of(new Bank("inline", List.of(1, 2, 3, 4))),
                List.of(1, 3, 4, 2),
                0.8,
                28.5,
                50,
                "INJ-4R",
                new BigDecimal("3900"));
    }
}
