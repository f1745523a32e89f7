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
 * @param shop tables shifts, repairs, transfers, returns, task_done and failure_answers
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
        List<Rule> rules,
        ShopRecords shop) {
    /** @throws InvalidFleetException where rows do not fit together: an unknown name, a cylinder the engine has not */
    public FleetSnapshot(
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
            List<Rule> rules,
            ShopRecords shop) {
        this.depots = sorted(depots, FleetOrder.DEPOTS);
        this.capacity = sorted(capacity, FleetOrder.CAPACITY);
        this.engineFamilies = sorted(engineFamilies, FleetOrder.ENGINE_FAMILIES);
        this.access = sorted(access, FleetOrder.ACCESS);
        this.dutyGroups = sorted(dutyGroups, FleetOrder.DUTY_GROUPS);
        this.trucks = sorted(trucks, FleetOrder.TRUCKS);
        this.injectors = sorted(injectors, FleetOrder.INJECTORS);
        this.readings = sorted(readings, FleetOrder.READINGS);
        this.faults = sorted(faults, FleetOrder.FAULTS);
        this.cylinderTests = sorted(cylinderTests, FleetOrder.CYLINDER_TESTS);
        this.parts = sorted(parts, FleetOrder.PARTS);
        this.jobParts = sorted(jobParts, FleetOrder.JOB_PARTS);
        this.stock = sorted(stock, FleetOrder.STOCK);
        this.purchaseLines = sorted(purchaseLines, FleetOrder.PURCHASE_LINES);
        this.away = sorted(away, FleetOrder.AWAY);
        this.intervals = sorted(intervals, FleetOrder.INTERVALS);
        this.rules = sorted(rules, FleetOrder.RULES);
        this.shop = shop;
        FleetCheck.check(this);
    }

    /** A fleet whose depots work the planner's usual shift, and without recorded repairs. */
    public FleetSnapshot(
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
        this(
                depots,
                capacity,
                engineFamilies,
                access,
                dutyGroups,
                trucks,
                injectors,
                readings,
                faults,
                cylinderTests,
                parts,
                jobParts,
                stock,
                purchaseLines,
                away,
                intervals,
                rules,
                ShopRecords.NONE);
    }

    /** Table shifts. */
    public List<DepotShift> shifts() {
        return shop.shifts();
    }

    /** Table repairs. */
    public List<Repair> repairs() {
        return shop.repairs();
    }

    /** Table transfers. */
    public List<Transfer> transfers() {
        return shop.transfers();
    }

    /** Table returns. */
    public List<UnitReturn> returns() {
        return shop.returns();
    }

    /** Table task_done. */
    public List<TaskDone> tasksDone() {
        return shop.tasksDone();
    }

    /** Table failure_answers. */
    public List<FailureAnswer> failureAnswers() {
        return shop.failureAnswers();
    }

    /** Pieces in stock that depots outside this snapshot can give away. */
    public List<StockLine> spares() {
        return shop.spares();
    }

    /** The same fleet with these ways between depots. */
    public FleetSnapshot withTransfers(List<Transfer> others) {
        return withShop(shop.withTransfers(others));
    }

    /**
     * The same fleet of some depots, with what others can give it.
     *
     * @param pieces pieces that depots outside this snapshot can give away
     * @param ways ways between depots, from those too; without one, the site's figures hold
     */
    public FleetSnapshot withSpares(List<StockLine> pieces, List<Transfer> ways) {
        return withShop(shop.withSpares(pieces, ways));
    }

    private FleetSnapshot withShop(ShopRecords other) {
        return new FleetSnapshot(
                depots,
                capacity,
                engineFamilies,
                access,
                dutyGroups,
                trucks,
                injectors,
                readings,
                faults,
                cylinderTests,
                parts,
                jobParts,
                stock,
                purchaseLines,
                away,
                intervals,
                rules,
                other);
    }

    /** A fleet without a row in any table. */
    public static FleetSnapshot empty() {
        return new FleetSnapshot(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    private static <R> List<R> sorted(List<R> rows, Comparator<R> order) {
        return rows.stream().sorted(order).toList();
    }
}
