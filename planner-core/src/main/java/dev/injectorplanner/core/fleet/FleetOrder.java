package dev.injectorplanner.core.fleet;

import static java.util.Comparator.comparing;

import java.util.Comparator;

/** The order of rows in a snapshot: by their natural keys. */
final class FleetOrder {
    static final Comparator<Depot> DEPOTS = comparing(Depot::depot);

    static final Comparator<CapacityOverride> CAPACITY =
            comparing(CapacityOverride::depot).thenComparing(CapacityOverride::date);

    static final Comparator<EngineFamily> ENGINE_FAMILIES = comparing(EngineFamily::family);

    static final Comparator<AccessStep> ACCESS =
            comparing(AccessStep::family).thenComparing(AccessStep::order).thenComparing(AccessStep::step);

    static final Comparator<DutyGroup> DUTY_GROUPS = comparing(DutyGroup::dutyGroup);

    static final Comparator<Truck> TRUCKS = comparing(Truck::truck);

    static final Comparator<FittedInjector> INJECTORS = comparing(FittedInjector::truck)
            .thenComparing(FittedInjector::cylinder)
            .thenComparing(FittedInjector::fittedOn)
            .thenComparing(FittedInjector::fitting);

    static final Comparator<Reading> READINGS = comparing(Reading::truck).thenComparing(Reading::takenAt);

    static final Comparator<Fault> FAULTS = comparing(Fault::truck)
            .thenComparing(Fault::seenAt)
            .thenComparing((Fault f) -> f.code().text())
            .thenComparing((Fault f) -> f.cylinder() == null ? 0 : f.cylinder());

    static final Comparator<CylinderTest> CYLINDER_TESTS = comparing(CylinderTest::truck)
            .thenComparing(CylinderTest::cylinder)
            .thenComparing(CylinderTest::testedAt)
            .thenComparing(CylinderTest::test);

    static final Comparator<Part> PARTS = comparing(Part::part);

    static final Comparator<JobPart> JOB_PARTS = comparing(JobPart::family)
            .thenComparing(JobPart::per)
            .thenComparing((JobPart j) -> String.valueOf(j.step()))
            .thenComparing((JobPart j) -> String.valueOf(j.task()))
            .thenComparing(JobPart::part);

    static final Comparator<StockLine> STOCK = comparing(StockLine::depot).thenComparing(StockLine::part);

    static final Comparator<PurchaseLine> PURCHASE_LINES =
            comparing(PurchaseLine::order).thenComparing(PurchaseLine::part).thenComparing(PurchaseLine::depot);

    static final Comparator<AwayWindow> AWAY = comparing(AwayWindow::truck).thenComparing(AwayWindow::from);

    static final Comparator<IntervalTask> INTERVALS =
            comparing(IntervalTask::family).thenComparing(IntervalTask::task);

    static final Comparator<Rule> RULES =
            comparing((Rule r) -> String.valueOf(r.family())).thenComparing(Rule::rule);

    static final Comparator<Transfer> TRANSFERS = comparing(Transfer::from).thenComparing(Transfer::to);
    static final Comparator<DepotShift> SHIFTS =
            comparing(DepotShift::depot).thenComparing(DepotShift::weekday).thenComparing(DepotShift::start);

    static final Comparator<UnitReturn> RETURNS = comparing(UnitReturn::truck)
            .thenComparing(UnitReturn::fittedOn)
            .thenComparing(UnitReturn::cylinder)
            .thenComparing(UnitReturn::fitting)
            .thenComparing(UnitReturn::what);
    static final Comparator<TaskDone> TASKS_DONE =
            comparing(TaskDone::truck).thenComparing(TaskDone::task).thenComparing(TaskDone::doneOn);

    static final Comparator<FailureAnswer> FAILURE_ANSWERS = comparing(FailureAnswer::part);

    static final Comparator<Repair> REPAIRS =
            comparing(Repair::truck).thenComparing(Repair::doneOn).thenComparing(Repair::what);

    private FleetOrder() {}
}
