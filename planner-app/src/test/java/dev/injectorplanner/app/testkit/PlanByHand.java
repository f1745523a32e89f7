package dev.injectorplanner.app.testkit;

import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.Action;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.finding.FindingKind;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.List;

/** Plans whose findings and visits a test chooses; the rest is a real plan's. */
public final class PlanByHand {
    public static final LocalDate DAY = OneOfEach.DAY;

    private static final Plan REAL =
            new Planner(new ExactScheduler(SearchLimits.USUAL)).plan(OneOfEach.fleet(), Policy.standard(), DAY);

    private PlanByHand() {}

    public static Planned of(LocalDate today, List<DueFinding> findings, List<Visit> visits) {
        return of(OneOfEach.fleet(), today, findings, visits);
    }

    public static Planned of(FleetSnapshot fleet, LocalDate today, List<DueFinding> findings, List<Visit> visits) {
        return new Planned(
                fleet,
                new Plan(
                        today,
                        IsoWeek.of(today),
                        REAL.weeks(),
                        REAL.cost(),
                        REAL.injectors(),
                        REAL.risks(),
                        REAL.lives(),
                        REAL.signEffects(),
                        REAL.inspections(),
                        REAL.expectedFailures(),
                        findings,
                        visits,
                        REAL.reasons(),
                        REAL.unplanned(),
                        List.of(),
                        REAL.loads(),
                        REAL.parts(),
                        REAL.cores(),
                        REAL.claims(),
                        REAL.coolant(),
                        REAL.assumptions()));
    }

    public static DueFinding finding(String truck, int cylinder, String evidence, LocalDate by) {
        return finding(Database.NORTH, truck, cylinder, evidence, by);
    }

    public static DueFinding finding(String depot, String truck, int cylinder, String evidence, LocalDate by) {
        return new DueFinding(
                truck,
                depot,
                cylinder,
                FindingKind.FAULTS,
                null,
                Action.REPLACE,
                evidence,
                "3 faults in 30 days",
                "site rule",
                by);
    }

    /** A fault of the whole truck that must not wait. */
    public static DueFinding mustNotWait(String truck, String code, LocalDate by) {
        return new DueFinding(
                truck,
                Database.NORTH,
                null,
                FindingKind.SAFETY,
                null,
                Action.INSPECT,
                code + " seen",
                "must not wait",
                "planner default",
                by,
                code);
    }

    public static Visit visit(String truck, IsoWeek week, DueFinding... findings) {
        return new Visit(
                truck,
                Database.NORTH,
                "Four",
                week,
                List.of(1),
                List.of(),
                List.of(),
                false,
                2,
                0,
                List.of(findings),
                "for the faults");
    }
}
