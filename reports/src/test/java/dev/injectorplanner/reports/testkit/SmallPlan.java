package dev.injectorplanner.reports.testkit;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.parts.FailureChance;
import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.parts.OrderRules;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.parts.PostponementCost;
import dev.injectorplanner.core.plan.Assumption;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.PlanCost;
import dev.injectorplanner.core.plan.RecordsState;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.core.warranty.WarrantyClaims;
import java.util.Collections;
import java.util.List;

/** A plan made by hand for {@link SmallFleet}: three visits in three weeks from Monday 2 March 2026. */
public final class SmallPlan {
    public static final IsoWeek FIRST = new IsoWeek(2026, 10);

    private SmallPlan() {}

    /** Chances of failing for the eight injectors of each truck. */
    public static FailureForecast forecast() {
        return FailureForecast.ofRates(
                Collections.nCopies(24, new FailureChance(SmallFleet.DEPOT, SmallFleet.INJECTOR, 0.004)));
    }

    public static Plan standard() {
        return with(forecast(), CoolantRules.standard());
    }

    public static Plan with(FailureForecast forecast, CoolantRules coolant) {
        return of(
                List.of(
                        visit("+T2", 0, List.of(1, 3), 20),
                        visit("T1", 1, List.of(7, 8), 30),
                        visit("T3", 2, List.of(), 0)),
                forecast,
                coolant);
    }

    /** The same fleet without a visit. */
    public static Plan withoutVisits() {
        return of(List.of(), FailureForecast.NONE, CoolantRules.standard());
    }

    private static Plan of(List<Visit> visits, FailureForecast forecast, CoolantRules coolant) {
        FleetIndex index = new FleetIndex(SmallFleet.snapshot());
        OrderRules orders = OrderRules.standard();
        return new Plan(
                SmallFleet.TODAY,
                FIRST,
                4,
                new PlanCost(-1_200, -1_000, -200, null, null, List.of(), Schedule.Stop.RULE),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                visits.stream().flatMap(visit -> visit.dueItems().stream()).toList(),
                visits,
                List.of(),
                List.of(new Unplanned(
                        "T3", SmallFleet.DEPOT, List.of(item("T3", 2)), "cannot be spared: on hire, no spare")),
                List.of(),
                List.of(load(0, 1, 8), load(1, 1, 9.5), load(2, 1, 0.5), load(3, 0, 0)),
                PartsPlan.of(index, SmallFleet.TODAY, 4, orders, visits, forecast, PostponementCost.perWeek(orders)),
                CoresOwed.of(index, SmallFleet.TODAY),
                WarrantyClaims.of(index, SmallFleet.TODAY),
                CoolantPlan.of(index, visits, coolant),
                List.of(new Assumption("weeks", "four, for a test", "site")),
                List.of(),
                List.of(),
                List.of(),
                RecordsState.WHOLE);
    }

    private static WeekLoad load(int ahead, int visits, double hours) {
        return new WeekLoad(SmallFleet.DEPOT, FIRST.plus(ahead), visits, hours, 80, 0, hours / 8, 10);
    }

    private static Visit visit(String truck, int ahead, List<Integer> cylinders, double drainedLitres) {
        boolean opened = !cylinders.isEmpty();
        return new Visit(
                truck,
                SmallFleet.DEPOT,
                SmallFleet.V8,
                FIRST.plus(ahead),
                cylinders,
                opened ? List.of("covers off", "intake off") : List.of(),
                opened ? List.of("valve clearances") : List.of(),
                !opened,
                opened ? 8 : 0.5,
                drainedLitres,
                List.of(item(truck, opened ? cylinders.get(0) : 2)),
                "@why: a text that begins like a formula stays a text");
    }

    private static DueItem item(String truck, int cylinder) {
        return new DueItem(
                truck,
                SmallFleet.DEPOT,
                cylinder,
                DueKind.FAULTS,
                null,
                DueAction.REPLACE,
                "=4 faults in 30 days",
                "3 faults in 30 days",
                "site rule",
                SmallFleet.TODAY.plusDays(3));
    }
}
