package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.truth.Draws;
import dev.injectorplanner.core.truth.TestTruth;
import dev.injectorplanner.core.truth.TruckClock;
import dev.injectorplanner.core.truth.UsagePath;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a truck shows: faults and test readings that come with a defect before it fails, and the noise of healthy ones. */
final class Symptoms {
    /** Mean km from a defect that can be seen to the failure, beyond the first 2,000. */
    static final double MEAN_DELAY_KM = 18_000;

    /** Mean km from a defect to the day the workshop finds it, if it has not failed by then: four in ten are found in time. */
    static final double MEAN_KM_TO_BE_FOUND = 30_000;

    private static final double KM_BETWEEN_FAULTS = 2_200;
    private static final double KM_BETWEEN_STRAY_FAULTS = 70_000;
    private static final int DAYS_BETWEEN_TESTS = 110;
    private static final TestTruth SHOWN = new TestTruth(0.9, 2.5, 5, 26, 4, 22, 40, 4);

    private final Draws draws;
    private final EngineUse use;
    private final UsagePath path;
    private final TruckClock clock;
    private final List<Unit> units;
    private final LocalDate from;
    private final LocalDate today;

    /** @param from first day that the tables tell of */
    Symptoms(
            Draws draws,
            EngineUse use,
            UsagePath path,
            TruckClock clock,
            List<Unit> units,
            LocalDate from,
            LocalDate today) {
        this.draws = draws;
        this.use = use;
        this.path = path;
        this.clock = clock;
        this.units = units;
        this.from = from;
        this.today = today;
    }

    List<Fault> faults() {
        Map<String, Fault> faults = new TreeMap<>();
        for (Unit unit : units) {
            int count = 0;
            double km = unit.defectKm + draws.exponential(KM_BETWEEN_FAULTS);
            while (km < unit.endKm) {
                count++;
                fault(faults, unit, unit.fittedKm + km, ofDefect(unit.cylinder, draws.chance(0.2)), Math.min(count, 3));
                km += draws.exponential(KM_BETWEEN_FAULTS);
            }
            double stray = draws.exponential(KM_BETWEEN_STRAY_FAULTS);
            while (stray < unit.endKm) {
                fault(faults, unit, unit.fittedKm + stray, ofCircuit(unit.cylinder), 1);
                stray += draws.exponential(KM_BETWEEN_STRAY_FAULTS * 4);
            }
        }
        return new ArrayList<>(faults.values());
    }

    private void fault(Map<String, Fault> faults, Unit unit, double atKm, String code, int count) {
        LocalDate day = path.dayAt(atKm);
        if (day.isBefore(from) || !day.isBefore(today) || !day.isBefore(unit.removedOn)) {
            return;
        }
        double seconds = draws.between(5 * 3_600, 20 * 3_600);
        Fault fault = new Fault(
                clock.truck(),
                clock.moment(day, seconds),
                new FaultCode(code),
                null,
                count,
                draws.chance(0.1) ? null : Double.valueOf(clock.odometerOn(day)));
        faults.put(fault.seenAt() + code, fault);
    }

    /** A worn injector mostly says that it does not do its work; now and then that its circuit is wrong or that its cylinder misfires. */
    private String ofDefect(int cylinder, boolean other) {
        if (use.lettered()) {
            return other ? "P03" + two(cylinder) : "P0" + (263 + 3 * (cylinder - 1));
        }
        return other ? ofCircuit(cylinder) : "SPN " + (650 + cylinder) + " FMI 7";
    }

    /** What a chafed wire or a loose plug says. */
    private String ofCircuit(int cylinder) {
        return use.lettered() ? "P02" + two(cylinder) : "SPN " + (650 + cylinder) + " FMI 5";
    }

    private static String two(int number) {
        return (number < 10 ? "0" : "") + number;
    }

    List<CylinderTest> tests() {
        List<CylinderTest> tests = new ArrayList<>();
        LocalDate day = from.plusDays(draws.whole(0, DAYS_BETWEEN_TESTS));
        while (day.isBefore(today)) {
            for (Unit unit : units) {
                if (!day.isBefore(unit.fittedOn) && day.isBefore(unit.removedOn)) {
                    test(tests, unit, day);
                }
            }
            day = day.plusDays(draws.whole(DAYS_BETWEEN_TESTS - 30, DAYS_BETWEEN_TESTS + 30));
        }
        return tests;
    }

    private void test(List<CylinderTest> tests, Unit unit, LocalDate day) {
        double ageKm = Math.max(0, path.kmOn(day) - unit.fittedKm);
        double gone = Math.max(0, Math.min(1, (ageKm - unit.defectKm) / Math.max(1, unit.lifeKm - unit.defectKm)));
        boolean defect = ageKm > unit.defectKm;
        double side = unit.cylinder % 2 == 0 ? 1 : -1;
        double balance = SHOWN.balance(draws, side, defect, gone);
        double flow = SHOWN.flow(draws, defect, gone);
        add(tests, unit, day, TestKind.BALANCE, balance, "mm3/stroke", "warm idle");
        add(tests, unit, day, TestKind.RETURN_FLOW, flow, "ml/min", "1,200 rpm in neutral");
    }

    private void add(
            List<CylinderTest> tests,
            Unit unit,
            LocalDate day,
            TestKind kind,
            double value,
            String unitWords,
            String state) {
        tests.add(new CylinderTest(
                clock.truck(), unit.cylinder, clock.moment(day, 9 * 3_600), kind, value, unitWords, state));
    }
}
