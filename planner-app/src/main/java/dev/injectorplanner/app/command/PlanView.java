package dev.injectorplanner.app.command;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantWeek;
import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.parts.UnplannedNeed;
import dev.injectorplanner.core.plan.Assumption;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.PlanCost;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import java.time.LocalDate;
import java.util.List;

/** What {@code plan --json} prints: the plan without the ages of injectors that are not due. */
record PlanView(
        LocalDate today,
        IsoWeek firstWeek,
        int weeks,
        PlanCost cost,
        List<Visit> visits,
        List<TruckReason> reasons,
        List<Unplanned> unplanned,
        List<DueFinding> findings,
        List<WeekLoad> loads,
        List<PartNeed> partNeeds,
        List<OrderLine> orders,
        List<ShortLine> shortList,
        List<UnplannedNeed> unplannedNeeds,
        List<CoreOwed> cores,
        List<WarrantyClaim> claims,
        List<CoolantNeed> coolantNeeds,
        List<CoolantWeek> coolantWeeks,
        List<Assumption> assumptions) {
    static PlanView of(Plan plan) {
        return new PlanView(
                plan.today(),
                plan.firstWeek(),
                plan.weeks(),
                plan.cost(),
                plan.visits(),
                plan.reasons(),
                plan.unplanned(),
                plan.findings(),
                plan.loads(),
                plan.partNeeds(),
                plan.parts().orders(),
                plan.parts().shortList(),
                plan.parts().unplannedNeeds(),
                plan.cores(),
                plan.claims(),
                plan.coolantNeeds(),
                plan.coolant().weeks(),
                plan.assumptions());
    }
}
