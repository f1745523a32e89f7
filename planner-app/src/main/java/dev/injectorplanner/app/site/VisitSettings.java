package dev.injectorplanner.app.site;

import static dev.injectorplanner.app.site.SettingKinds.figure;

import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.plan.Policy;
import java.util.List;

/** How visits are weighed, and how far a plan looks ahead. */
final class VisitSettings {
    private static final Policy POLICY = Policy.standard();
    private static final VisitRules USUAL = POLICY.visits();

    static final List<SettingKind> LIST = List.of(
            figure(
                    SettingKinds.RESCHEDULING_COST,
                    SettingArea.VISITS,
                    "Rescheduling cost: moving a confirmed visit",
                    "what a plan must save before it moves a confirmed visit",
                    Measure.MONEY,
                    0,
                    1_000_000,
                    USUAL.reschedulingCost(),
                    visits(VisitRules::withReschedulingCost)),
            figure(
                    "frozen-weeks",
                    SettingArea.VISITS,
                    "Frozen weeks",
                    "number of first weeks in which confirmed visits stay where they are",
                    Measure.WEEKS,
                    0,
                    26,
                    USUAL.frozenWeeks(),
                    visits((rules, v) -> rules.withFrozenWeeks((int) v))),
            figure(
                    "bay-per-visit",
                    SettingArea.VISITS,
                    "Bay, per visit",
                    "use of a bay, moving the truck in and out, paperwork",
                    Measure.MONEY,
                    0,
                    1_000_000,
                    USUAL.bayPerVisit(),
                    visits(VisitRules::withBayPerVisit)),
            figure(
                    "coolant-per-litre",
                    SettingArea.VISITS,
                    "Coolant drained",
                    "coolant lost, and handling",
                    Measure.MONEY_A_LITRE,
                    0,
                    10_000,
                    USUAL.coolantPerLitre(),
                    visits(VisitRules::withCoolantPerLitre)),
            figure(
                    "downtime-per-day",
                    SettingArea.VISITS,
                    "Truck off the road",
                    "per day, unless the truck’s duty group sets its own cost",
                    Measure.MONEY_A_DAY,
                    0,
                    1_000_000,
                    USUAL.downtimePerDay(),
                    visits(VisitRules::withDowntimePerDay)),
            figure(
                    "late-per-day",
                    SettingArea.VISITS,
                    "Past a rule’s limit",
                    "penalty per day for each cylinder past its limit",
                    Measure.MONEY_A_DAY,
                    0,
                    1_000_000,
                    USUAL.latePerDay(),
                    visits(VisitRules::withLatePerDay)),
            figure(
                    "task-late-per-day",
                    SettingArea.VISITS,
                    "Service or test late",
                    "penalty per day for a late scheduled service or injector test",
                    Measure.MONEY_A_DAY,
                    0,
                    1_000_000,
                    USUAL.taskLatePerDay(),
                    visits(VisitRules::withTaskLatePerDay)),
            figure(
                    "warranty-test-worth",
                    SettingArea.VISITS,
                    "Test done before a warranty ends",
                    "value of such a test",
                    Measure.MONEY,
                    0,
                    1_000_000,
                    USUAL.warrantyTestWorth(),
                    visits(VisitRules::withWarrantyTestWorth)),
            figure(
                    "weeks",
                    SettingArea.LOOKING_AHEAD,
                    "Weeks of a plan",
                    "how far a plan looks ahead",
                    Measure.WEEKS,
                    1,
                    104,
                    POLICY.weeks(),
                    (policy, kept) -> policy.withWeeks((int) number(kept))),
            figure(
                    "usage-window-days",
                    SettingArea.LOOKING_AHEAD,
                    "Days of readings",
                    "number of days of readings used for distance and hours per week",
                    Measure.DAYS,
                    14,
                    3_650,
                    POLICY.usageWindowDays(),
                    (policy, kept) -> policy.withUsageWindowDays((int) number(kept))),
            figure(
                    "stale-reading-days",
                    SettingArea.LOOKING_AHEAD,
                    "Days without a reading",
                    "a truck not read for more days is reported on the plan, its file and the work list",
                    Measure.DAYS,
                    1,
                    3_650,
                    POLICY.staleReadingDays(),
                    (policy, kept) -> policy.withStaleReadingDays((int) number(kept))),
            figure(
                    "bay-hours-per-day",
                    SettingArea.LOOKING_AHEAD,
                    "Bay hours per day",
                    "hours of work a truck in a bay gets per day",
                    Measure.HOURS,
                    1,
                    24,
                    POLICY.bayHoursPerDay(),
                    (policy, kept) -> policy.withBayHoursPerDay(number(kept))));

    private VisitSettings() {}

    private interface Change {
        VisitRules of(VisitRules rules, double value);
    }

    private static SettingKind.Effect visits(Change change) {
        return (policy, kept) -> policy.withVisits(change.of(policy.visits(), number(kept)));
    }

    private static double number(String kept) {
        return Double.parseDouble(kept);
    }
}
