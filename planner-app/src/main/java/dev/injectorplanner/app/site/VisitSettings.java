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
                    "nuisance",
                    SettingArea.VISITS,
                    "Nuisance: moving an announced visit",
                    "what the schedule must gain before it moves a visit that was announced",
                    Measure.MONEY,
                    0,
                    1_000_000,
                    USUAL.reschedulingCost(),
                    visits((rules, v) -> new VisitRules(
                            rules.bayPerVisit(),
                            rules.coolantPerLitre(),
                            rules.downtimePerDay(),
                            rules.latePerDay(),
                            rules.taskLatePerDay(),
                            rules.warrantyTestWorth(),
                            v,
                            rules.frozenWeeks(),
                            rules.keptSets()))),
            figure(
                    "frozen-weeks",
                    SettingArea.VISITS,
                    "Frozen weeks",
                    "announced visits of so many first weeks stay where they are",
                    Measure.WEEKS,
                    0,
                    26,
                    USUAL.frozenWeeks(),
                    visits((rules, v) -> new VisitRules(
                            rules.bayPerVisit(),
                            rules.coolantPerLitre(),
                            rules.downtimePerDay(),
                            rules.latePerDay(),
                            rules.taskLatePerDay(),
                            rules.warrantyTestWorth(),
                            rules.reschedulingCost(),
                            (int) v,
                            rules.keptSets()))),
            figure(
                    "bay-per-visit",
                    SettingArea.VISITS,
                    "Bay, a visit",
                    "use of a bay, moving the truck in and out, paperwork",
                    Measure.MONEY,
                    0,
                    1_000_000,
                    USUAL.bayPerVisit(),
                    visits((rules, v) -> new VisitRules(
                            v,
                            rules.coolantPerLitre(),
                            rules.downtimePerDay(),
                            rules.latePerDay(),
                            rules.taskLatePerDay(),
                            rules.warrantyTestWorth(),
                            rules.reschedulingCost(),
                            rules.frozenWeeks(),
                            rules.keptSets()))),
            figure(
                    "coolant-per-litre",
                    SettingArea.VISITS,
                    "Coolant drained",
                    "what is lost of it, and its handling",
                    Measure.MONEY_A_LITRE,
                    0,
                    10_000,
                    USUAL.coolantPerLitre(),
                    visits((rules, v) -> new VisitRules(
                            rules.bayPerVisit(),
                            v,
                            rules.downtimePerDay(),
                            rules.latePerDay(),
                            rules.taskLatePerDay(),
                            rules.warrantyTestWorth(),
                            rules.reschedulingCost(),
                            rules.frozenWeeks(),
                            rules.keptSets()))),
            figure(
                    "downtime-per-day",
                    SettingArea.VISITS,
                    "A truck standing",
                    "a day of it, where the truck’s duty group says nothing else",
                    Measure.MONEY_A_DAY,
                    0,
                    1_000_000,
                    USUAL.downtimePerDay(),
                    visits((rules, v) -> new VisitRules(
                            rules.bayPerVisit(),
                            rules.coolantPerLitre(),
                            v,
                            rules.latePerDay(),
                            rules.taskLatePerDay(),
                            rules.warrantyTestWorth(),
                            rules.reschedulingCost(),
                            rules.frozenWeeks(),
                            rules.keptSets()))),
            figure(
                    "late-per-day",
                    SettingArea.VISITS,
                    "Past a limit of the rules",
                    "what a day is weighed with that a cylinder is past its limit",
                    Measure.MONEY_A_DAY,
                    0,
                    1_000_000,
                    USUAL.latePerDay(),
                    visits((rules, v) -> new VisitRules(
                            rules.bayPerVisit(),
                            rules.coolantPerLitre(),
                            rules.downtimePerDay(),
                            v,
                            rules.taskLatePerDay(),
                            rules.warrantyTestWorth(),
                            rules.reschedulingCost(),
                            rules.frozenWeeks(),
                            rules.keptSets()))),
            figure(
                    "task-late-per-day",
                    SettingArea.VISITS,
                    "Task or test late",
                    "what a day is weighed with that an interval task or an inspection is late",
                    Measure.MONEY_A_DAY,
                    0,
                    1_000_000,
                    USUAL.taskLatePerDay(),
                    visits((rules, v) -> new VisitRules(
                            rules.bayPerVisit(),
                            rules.coolantPerLitre(),
                            rules.downtimePerDay(),
                            rules.latePerDay(),
                            v,
                            rules.warrantyTestWorth(),
                            rules.reschedulingCost(),
                            rules.frozenWeeks(),
                            rules.keptSets()))),
            figure(
                    "warranty-test-worth",
                    SettingArea.VISITS,
                    "Test in time before a warranty ends",
                    "what such a test is worth",
                    Measure.MONEY,
                    0,
                    1_000_000,
                    USUAL.warrantyTestWorth(),
                    visits((rules, v) -> new VisitRules(
                            rules.bayPerVisit(),
                            rules.coolantPerLitre(),
                            rules.downtimePerDay(),
                            rules.latePerDay(),
                            rules.taskLatePerDay(),
                            v,
                            rules.reschedulingCost(),
                            rules.frozenWeeks(),
                            rules.keptSets()))),
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
                    "readings of so many days back tell distance and hours a week",
                    Measure.DAYS,
                    14,
                    3_650,
                    POLICY.usageWindowDays(),
                    (policy, kept) -> policy.withUsageWindowDays((int) number(kept))),
            figure(
                    "bay-hours-per-day",
                    SettingArea.LOOKING_AHEAD,
                    "Work in a bay a day",
                    "hours of work that a truck in a bay gets",
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
