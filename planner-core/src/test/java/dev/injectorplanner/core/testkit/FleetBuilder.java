package dev.injectorplanner.core.testkit;

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
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.ShopRecords;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.fleet.Vin;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;

/**
 * A small fleet for tests that read aloud: one depot, North (two bays, 16 h a day, Monday to Friday, 8 h overtime a
 * week), one V8 family with three access steps, one injector part. Rows are added by short calls.
 */
public final class FleetBuilder {
    /** A Monday. */
    public static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    public static final String NORTH = "North";
    public static final String V8 = "V8";
    public static final String INJECTOR = "INJ-8";

    public final List<Depot> depots = new ArrayList<>();
    public final List<CapacityOverride> capacity = new ArrayList<>();
    public final List<EngineFamily> families = new ArrayList<>();
    public final List<AccessStep> access = new ArrayList<>();
    public final List<DutyGroup> dutyGroups = new ArrayList<>();
    public final List<Truck> trucks = new ArrayList<>();
    public final List<FittedInjector> injectors = new ArrayList<>();
    public final List<Reading> readings = new ArrayList<>();
    public final List<Fault> faults = new ArrayList<>();
    public final List<CylinderTest> tests = new ArrayList<>();
    public final List<Part> parts = new ArrayList<>();
    public final List<JobPart> jobParts = new ArrayList<>();
    public final List<StockLine> stock = new ArrayList<>();
    public final List<PurchaseLine> purchaseLines = new ArrayList<>();
    public final List<AwayWindow> away = new ArrayList<>();
    public final List<IntervalTask> intervals = new ArrayList<>();
    public final List<Rule> rules = new ArrayList<>();
    public final List<Transfer> transfers = new ArrayList<>();
    public final List<DepotShift> shifts = new ArrayList<>();
    public final List<Repair> repairs = new ArrayList<>();
    public final List<UnitReturn> returns = new ArrayList<>();
    public final List<TaskDone> tasksDone = new ArrayList<>();
    public final List<FailureAnswer> answers = new ArrayList<>();

    public FleetBuilder() {
        depots.add(depot(2, 16, 8));
        families.add(v8());
        access.add(new AccessStep(V8, "covers off", 1, 0.5, List.of(), 0, ""));
        access.add(new AccessStep(V8, "intake off", 2, 2.5, List.of(), 40, "hot coolant"));
        access.add(new AccessStep(V8, "cab mounts down", 3, 3, List.of(7, 8), 60, ""));
        parts.add(part(INJECTOR, 0, 0));
    }

    public static Depot depot(int bays, double hoursADay, double overtime) {
        return new Depot(
                NORTH,
                "North yard",
                ZoneId.of("Europe/Berlin"),
                bays,
                hoursADay,
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                new BigDecimal("60"),
                new BigDecimal("90"),
                overtime);
    }

    public static EngineFamily v8() {
        return v8(50);
    }

    /** With this many percent of glycol. */
    public static EngineFamily v8(double glycolPercent) {
        return new EngineFamily(
                V8,
                8,
                List.of(new Bank("left", List.of(1, 3, 5, 7)), new Bank("right", List.of(2, 4, 6, 8))),
                List.of(1, 5, 4, 2, 6, 3, 7, 8),
                0.4,
                50,
                glycolPercent,
                INJECTOR,
                new BigDecimal("4200"));
    }

    public static Part part(String part, int warrantyMonths, double warrantyKm) {
        return new Part(
                part,
                "injector",
                PartKind.INJECTOR,
                "Supplier One",
                new BigDecimal("480"),
                new BigDecimal("120"),
                60,
                10,
                21,
                1,
                0,
                warrantyMonths,
                warrantyKm,
                null);
    }

    public FleetBuilder truck(String truck) {
        return truck(truck, null);
    }

    /** A truck in service since 2020 with a reading a week of the last 60 weeks: 1,400 km and 20 h a week, 300,000 km today. */
    public FleetBuilder truck(String truck, String dutyGroup) {
        trucks.add(new Truck(
                truck,
                new Vin("W0T000000" + String.format("%08d", trucks.size() + 1)),
                NORTH,
                V8,
                dutyGroup,
                LocalDate.of(2020, 1, 10),
                null,
                null));
        for (int week = 60; week >= 0; week--) {
            reading(truck, TODAY.minusWeeks(week), 300_000 - 1_400.0 * week, 6_000 - 20.0 * week);
        }
        return this;
    }

    /** At noon UTC. */
    public FleetBuilder reading(String truck, LocalDate day, Double km, Double hours) {
        readings.add(new Reading(truck, noon(day), km, hours, false));
        return this;
    }

    public static Instant noon(LocalDate day) {
        return Instant.ofEpochSecond(day.toEpochDay() * 86_400 + 43_200);
    }

    /** One new injector, in since a day, with the odometer then. */
    public FleetBuilder injector(String truck, int cylinder, LocalDate fittedOn, Double odometerKm) {
        injectors.add(new FittedInjector(
                truck, cylinder, INJECTOR, null, null, Origin.NEW, fittedOn, odometerKm, null, null, null, null, null));
        return this;
    }

    /** Every cylinder with an injector of the same age in km, fitted on 2023-01-09. */
    public FleetBuilder allInjectors(String truck, double ageKm) {
        for (int cylinder = 1; cylinder <= 8; cylinder++) {
            injector(truck, cylinder, LocalDate.of(2023, 1, 9), 300_000 - ageKm);
        }
        return this;
    }

    public FleetBuilder rule(RuleKind kind, double limit) {
        rules.add(new Rule(null, kind, limit, null));
        return this;
    }

    public FleetBuilder fault(String truck, LocalDate day, String code) {
        faults.add(new Fault(truck, noon(day), new FaultCode(code), null, 1, null));
        return this;
    }

    public FleetBuilder test(String truck, int cylinder, LocalDate day, TestKind test, double value, String unit) {
        tests.add(new CylinderTest(truck, cylinder, noon(day), test, value, unit, "warm idle"));
        return this;
    }

    /** Puts another depot in place of North. */
    public FleetBuilder withDepot(int bays, double hoursADay, double overtime) {
        depots.clear();
        depots.add(depot(bays, hoursADay, overtime));
        return this;
    }

    /** Pieces of the injector on North's shelf, so that no visit waits for parts. */
    public FleetBuilder onShelf(double pieces) {
        stock.add(new StockLine(NORTH, INJECTOR, pieces));
        return this;
    }

    /** A recorded repair. */
    public FleetBuilder repair(String truck, LocalDate doneOn, String what, String by) {
        repairs.add(new Repair(truck, doneOn, null, what, null, "", by));
        return this;
    }

    public FleetSnapshot build() {
        return new FleetSnapshot(
                depots,
                capacity,
                families,
                access,
                dutyGroups,
                trucks,
                injectors,
                readings,
                faults,
                tests,
                parts,
                jobParts,
                stock,
                purchaseLines,
                away,
                intervals,
                rules,
                new ShopRecords(shifts, repairs, transfers, tasksDone, answers, List.of(), returns));
    }

    /** The same rows in another order. */
    public static FleetSnapshot shuffled(FleetSnapshot fleet, long seed) {
        Random random = new Random(seed);
        return new FleetSnapshot(
                mixed(fleet.depots(), random),
                mixed(fleet.capacity(), random),
                mixed(fleet.engineFamilies(), random),
                mixed(fleet.access(), random),
                mixed(fleet.dutyGroups(), random),
                mixed(fleet.trucks(), random),
                mixed(fleet.injectors(), random),
                mixed(fleet.readings(), random),
                mixed(fleet.faults(), random),
                mixed(fleet.cylinderTests(), random),
                mixed(fleet.parts(), random),
                mixed(fleet.jobParts(), random),
                mixed(fleet.stock(), random),
                mixed(fleet.purchaseLines(), random),
                mixed(fleet.away(), random),
                mixed(fleet.intervals(), random),
                mixed(fleet.rules(), random),
                new ShopRecords(
                        mixed(fleet.shifts(), random),
                        mixed(fleet.repairs(), random),
                        mixed(fleet.transfers(), random),
                        mixed(fleet.tasksDone(), random),
                        mixed(fleet.failureAnswers(), random),
                        List.of(),
                        mixed(fleet.returns(), random)));
    }

    private static <R> List<R> mixed(List<R> rows, Random random) {
        List<R> mixed = new ArrayList<>(rows);
        Collections.shuffle(mixed, random);
        return mixed;
    }
}
