package dev.injectorplanner.app.testkit;

import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.history.LifeChange;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.RecordsState;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.List;

/** Plans whose due items and visits a test chooses; the rest is a real plan's. */
public final class PlanByHand {
    public static final LocalDate DAY = OneOfEach.DAY;

    private static final Plan REAL =
            new Planner(new ExactScheduler(SearchLimits.USUAL)).plan(OneOfEach.fleet(), Policy.standard(), DAY);

    private PlanByHand() {}

    public static Planned of(LocalDate today, List<DueItem> dueItems, List<Visit> visits) {
        return of(OneOfEach.fleet(), today, dueItems, visits);
    }

    public static Planned of(FleetSnapshot fleet, LocalDate today, List<DueItem> dueItems, List<Visit> visits) {
        return of(fleet, today, dueItems, visits, REAL.lifeChanges());
    }

    /** One that tells of parts that fail sooner. */
    public static Planned of(LocalDate today, List<DueItem> dueItems, LifeChange... changes) {
        return of(OneOfEach.fleet(), today, dueItems, List.of(), List.of(changes));
    }

    private static Planned of(
            FleetSnapshot fleet,
            LocalDate today,
            List<DueItem> dueItems,
            List<Visit> visits,
            List<LifeChange> changes) {
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
                        dueItems,
                        visits,
                        REAL.reasons(),
                        REAL.unplanned(),
                        List.of(),
                        REAL.loads(),
                        REAL.parts(),
                        REAL.cores(),
                        REAL.claims(),
                        REAL.coolant(),
                        REAL.assumptions(),
                        List.of(),
                        changes,
                        REAL.failureBands(),
                        RecordsState.WHOLE));
    }

    public static DueItem item(String truck, int cylinder, String evidence, LocalDate by) {
        return item(Database.NORTH, truck, cylinder, evidence, by);
    }

    public static DueItem item(String depot, String truck, int cylinder, String evidence, LocalDate by) {
        return new DueItem(
                truck,
                depot,
                cylinder,
                DueKind.FAULTS,
                null,
                DueAction.REPLACE,
                evidence,
                "3 faults in 30 days",
                "site rule",
                by);
    }

    /** A fault of the whole truck that is a safety item. */
    public static DueItem mustNotWait(String truck, String code, LocalDate by) {
        return new DueItem(
                truck,
                Database.NORTH,
                null,
                DueKind.SAFETY,
                null,
                DueAction.INSPECT,
                code + " seen",
                "safety: bring in now",
                "planner default",
                by,
                code);
    }

    public static Visit visit(String truck, IsoWeek week, DueItem... dueItems) {
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
                List.of(dueItems),
                "for the faults");
    }
}
