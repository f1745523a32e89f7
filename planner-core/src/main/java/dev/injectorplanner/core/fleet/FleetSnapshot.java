package dev.injectorplanner.core.fleet;

import java.util.Comparator;
import java.util.List;

/**
 * The fleet at one moment: every table, of one depot or of all. Rows are kept in the order of their keys, so that two
 * snapshots of the same rows are equal however the rows came in.
 *
 * @param depots table depots
 * @param capacity table capacity
 * @param engineFamilies table engine_families
 * @param access table access
 * @param dutyGroups table duty_groups
 * @param trucks table trucks
 * @param injectors table injectors
 * @param readings table readings
 * @param faults table faults
 * @param cylinderTests table cylinder_tests
 * @param parts table parts
 * @param jobParts table job_parts
 * @param stock table stock
 * @param purchaseLines table purchase_lines
 * @param away table away
 * @param intervals table intervals
 * @param rules table rules
 */
public record FleetSnapshot(
        List<Depot> depots,
        List<CapacityOverride> capacity,
        List<EngineFamily> engineFamilies,
        List<AccessStep> access,
        List<DutyGroup> dutyGroups,
        List<Truck> trucks,
        List<FittedInjector> injectors,
        List<Reading> readings,
        List<Fault> faults,
        List<CylinderTest> cylinderTests,
        List<Part> parts,
        List<JobPart> jobParts,
        List<StockLine> stock,
        List<PurchaseLine> purchaseLines,
        List<AwayWindow> away,
        List<IntervalTask> intervals,
        List<Rule> rules) {
    public FleetSnapshot {
        depots = sorted(depots, FleetOrder.DEPOTS);
        capacity = sorted(capacity, FleetOrder.CAPACITY);
        engineFamilies = sorted(engineFamilies, FleetOrder.ENGINE_FAMILIES);
        access = sorted(access, FleetOrder.ACCESS);
        dutyGroups = sorted(dutyGroups, FleetOrder.DUTY_GROUPS);
        trucks = sorted(trucks, FleetOrder.TRUCKS);
        injectors = sorted(injectors, FleetOrder.INJECTORS);
        readings = sorted(readings, FleetOrder.READINGS);
        faults = sorted(faults, FleetOrder.FAULTS);
        cylinderTests = sorted(cylinderTests, FleetOrder.CYLINDER_TESTS);
        parts = sorted(parts, FleetOrder.PARTS);
        jobParts = sorted(jobParts, FleetOrder.JOB_PARTS);
        stock = sorted(stock, FleetOrder.STOCK);
        purchaseLines = sorted(purchaseLines, FleetOrder.PURCHASE_LINES);
        away = sorted(away, FleetOrder.AWAY);
        intervals = sorted(intervals, FleetOrder.INTERVALS);
        rules = sorted(rules, FleetOrder.RULES);
    }

    private static <R> List<R> sorted(List<R> rows, Comparator<R> order) {
        return rows.stream().sorted(order).toList();
    }
}
