package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.replay.world.TruckWorld;
import dev.injectorplanner.core.truth.Draws;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the tables hold of one truck so far, as a shop notes it: not always, and not always right. */
final class TruckRecords {
    private static final long NOTES = 41;
    private static final double METER_NOT_NOTED = 0.06;
    private static final double READING_MISSED = 0.08;
    private static final double HOURS_NOT_READ = 0.04;
    private static final double UNKNOWN = 0.05;
    private static final double REPLACED_METER_TOLD = 0.8;
    private static final int SECONDS_OF_TEST = 9 * 3_600;

    private final TruckWorld truck;
    private final long seed;
    private final double wrongFound;
    private final List<List<FittedInjector>> injectors = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private final List<List<CylinderTest>> tests = new ArrayList<>();
    private boolean meterTold;

    TruckRecords(TruckWorld truck, long seed, double wrongFound) {
        this.truck = truck;
        this.seed = seed;
        this.wrongFound = wrongFound;
        for (int c = 0; c < truck.cylinders(); c++) {
            injectors.add(new ArrayList<>());
            tests.add(new ArrayList<>());
        }
    }

    TruckRecords copy() {
        TruckRecords copy = new TruckRecords(truck, seed, wrongFound);
        for (int c = 0; c < truck.cylinders(); c++) {
            copy.injectors.get(c).addAll(injectors.get(c));
            copy.tests.get(c).addAll(tests.get(c));
        }
        copy.readings.addAll(readings);
        copy.faults.addAll(faults);
        copy.meterTold = meterTold;
        return copy;
    }

    private Draws notes(int which, int a, int b) {
        return Draws.keyed(seed, NOTES, which, truck.truck().vinText().hashCode(), a, b);
    }

    /** An injector was fitted, or is in when the records begin. */
    void fitted(Position position) {
        LocalDate day = LocalDate.ofEpochDay(position.fittedDay);
        boolean noted = position.fittedDay >= truck.firstDay()
                && !notes(1, position.cylinder, position.n).chance(METER_NOT_NOTED);
        injectors
                .get(position.cylinder)
                .add(new FittedInjector(
                        truck.truck().truck(),
                        position.cylinder + 1,
                        truck.engine().injectorPart(),
                        null,
                        null,
                        position.unit.origin(),
                        day,
                        noted ? Double.valueOf(truck.clock().odometerOn(day)) : null,
                        noted ? Double.valueOf(truck.clock().hoursOn(day)) : null,
                        null,
                        null,
                        null,
                        null));
    }

    /** The injector in a cylinder comes out. */
    void removed(Position position, int day, boolean failed) {
        List<FittedInjector> rows = injectors.get(position.cylinder);
        FittedInjector row = rows.remove(rows.size() - 1);
        Draws draws = notes(2, position.cylinder, position.n);
        LocalDate date = LocalDate.ofEpochDay(day);
        boolean noted = !draws.chance(METER_NOT_NOTED);
        Found found = found(draws, failed ? Found.FAILED : position.hasDefect(day) ? Found.WORN : Found.HEALTHY);
        rows.add(new FittedInjector(
                row.truck(),
                row.cylinder(),
                row.part(),
                null,
                null,
                row.origin(),
                row.fittedOn(),
                row.odometerKm(),
                row.engineHours(),
                date,
                noted ? Double.valueOf(truck.clock().odometerOn(date)) : null,
                noted ? Double.valueOf(truck.clock().hoursOn(date)) : null,
                found));
    }

    private Found found(Draws draws, Found truth) {
        double wrong = draws.uniform();
        double unknown = draws.uniform();
        if (unknown < UNKNOWN) {
            return Found.UNKNOWN;
        }
        if (wrong >= wrongFound) {
            return truth;
        }
        return truth == Found.WORN ? Found.HEALTHY : Found.WORN;
    }

    void tested(Position position, int day, double balance, double flow) {
        LocalDate date = LocalDate.ofEpochDay(day);
        List<CylinderTest> rows = tests.get(position.cylinder);
        rows.add(test(position, date, TestKind.BALANCE, balance, "mm3/stroke", "warm idle"));
        rows.add(test(position, date, TestKind.RETURN_FLOW, flow, "ml/min", "1,200 rpm in neutral"));
    }

    private CylinderTest test(
            Position position, LocalDate day, TestKind kind, double value, String unit, String state) {
        return new CylinderTest(
                truck.truck().truck(),
                position.cylinder + 1,
                truck.clock().moment(day, SECONDS_OF_TEST),
                kind,
                value,
                unit,
                state);
    }

    /** Faults that an injector stored from one day to another, both included. */
    void faults(Position position, int from, int to) {
        for (int day : position.listFaultDays(truck, from, to)) {
            Draws draws = notes(3, position.cylinder, day);
            LocalDate date = LocalDate.ofEpochDay(day);
            int fmi = draws.chance(truck.circuitCodes(position.isOwnFault(day))) ? 5 : 7;
            faults.add(new Fault(
                    truck.truck().truck(),
                    truck.clock().moment(date, draws.between(5 * 3_600, 20 * 3_600)),
                    new FaultCode("SPN " + (651 + position.cylinder) + " FMI " + fmi),
                    null,
                    1,
                    draws.chance(0.1) ? null : Double.valueOf(truck.clock().odometerOn(date))));
        }
    }

    /** A reading a week, on some day of it, and not in every week. */
    void read(int monday) {
        Draws draws = notes(4, monday, 0);
        int day = monday + draws.whole(0, 6);
        if (draws.chance(READING_MISSED) || !truck.inServiceOn(day)) {
            return;
        }
        LocalDate date = LocalDate.ofEpochDay(day);
        boolean replaced = !meterTold && !date.isBefore(truck.clock().replacedOn());
        meterTold |= replaced;
        readings.add(new Reading(
                truck.truck().truck(),
                truck.clock().moment(date, draws.between(11.5 * 3_600, 12.5 * 3_600)),
                truck.clock().odometerOn(date),
                draws.chance(HOURS_NOT_READ)
                        ? null
                        : Double.valueOf(truck.clock().hoursOn(date)),
                replaced && !readings.isEmpty() && notes(5, 0, 0).chance(REPLACED_METER_TOLD)));
    }

    Truck row(int day) {
        Truck row = truck.truck();
        @Nullable LocalDate sold = day >= truck.soldKnownDay() ? LocalDate.ofEpochDay(truck.soldDay()) : null;
        return new Truck(
                row.truck(),
                row.vin(),
                row.depot(),
                row.family(),
                row.dutyGroup(),
                row.inServiceOn(),
                sold,
                row.warrantyUntil());
    }

    void addTo(
            List<FittedInjector> allInjectors,
            List<Reading> allReadings,
            List<Fault> allFaults,
            List<CylinderTest> allTests) {
        injectors.forEach(allInjectors::addAll);
        allReadings.addAll(readings);
        allFaults.addAll(faults);
        tests.forEach(allTests::addAll);
    }
}
