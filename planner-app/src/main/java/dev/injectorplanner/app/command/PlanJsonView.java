package dev.injectorplanner.app.command;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.Shipment;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.condition.SignEffect;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantWeek;
import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.history.LifeChange;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.OverdueLine;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.parts.UnplannedNeed;
import dev.injectorplanner.core.plan.Assumption;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.PlanChange;
import dev.injectorplanner.core.plan.PlanCost;
import dev.injectorplanner.core.plan.RecordsState;
import dev.injectorplanner.core.plan.SafetyCase;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.risk.ExpectedFailures;
import dev.injectorplanner.core.risk.FailureBand;
import dev.injectorplanner.core.risk.FamilyInspection;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What {@code plan --json} prints, money and weights apart: the plan without the ages and risks of injectors that are not due. */
record PlanJsonView(
        LocalDate today,
        IsoWeek firstWeek,
        int weeks,
        PlanCost cost,
        double money,
        double weights,
        List<Visit> visits,
        List<TruckReason> reasons,
        List<Unplanned> unplanned,
        @JsonProperty("findings") List<DueItem> dueItems,
        List<InjectorRisk> risks,
        List<PartLife> lives,
        List<SignEffect> signEffects,
        List<FamilyInspection> inspections,
        List<ExpectedFailures> expectedFailures,
        List<FailureBand> failureBands,
        List<LifeChange> lifeChanges,
        List<DepotDays> days,
        List<WeekLoad> loads,
        List<SafetyCase> safety,
        List<PartNeed> partNeeds,
        List<OrderLine> orders,
        List<ShortLine> shortList,
        List<UnplannedNeed> unplannedNeeds,
        List<Piece> allocation,
        List<Shipment> transfers,
        List<OverdueLine> overdueLines,
        List<CoreOwed> cores,
        List<WarrantyClaim> claims,
        List<CoolantNeed> coolantNeeds,
        List<CoolantWeek> coolantWeeks,
        List<Assumption> assumptions,
        List<String> recordsLack,
        RecordsState records,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable PlanChange change) {
    /** @param change what was tried changes, or null where nothing was */
    static PlanJsonView of(Plan plan, @Nullable PlanChange change) {
        return new PlanJsonView(
                plan.today(),
                plan.firstWeek(),
                plan.weeks(),
                plan.cost(),
                plan.cost().money(),
                plan.cost().weights(),
                plan.visits(),
                plan.reasons(),
                plan.unplanned(),
                plan.dueItems(),
                risksOfDue(plan),
                plan.lives(),
                plan.signEffects(),
                plan.inspections(),
                plan.expectedFailures(),
                plan.failureBands(),
                plan.lifeChanges(),
                plan.days(),
                plan.loads(),
                plan.safety(),
                plan.partNeeds(),
                plan.parts().orders(),
                plan.parts().shortList(),
                plan.parts().unplannedNeeds(),
                plan.parts().allocation().pieces().stream().map(Piece::of).toList(),
                plan.parts().transfers(),
                plan.parts().overdue(),
                plan.cores(),
                plan.claims(),
                plan.coolantNeeds(),
                plan.coolant().weeks(),
                plan.assumptions(),
                plan.records().sentences(),
                plan.records(),
                change);
    }

    /**
     * Pieces of one part that go to one visit.
     *
     * @param source shelf, order, transfer, express or ordinary order
     * @param fromDepot the depot that gives them, for a transfer
     * @param order the open purchase order that they come with; for express and ordinary orders the one to be sent sooner
     * @param readyDay the day they are at the visit's depot
     */
    record Piece(
            String truck,
            String depot,
            IsoWeek week,
            String part,
            double quantity,
            String source,
            @Nullable String fromDepot,
            @Nullable String order,
            LocalDate readyDay) {
        static Piece of(AllocatedPieces pieces) {
            return new Piece(
                    pieces.truck(),
                    pieces.depot(),
                    pieces.week(),
                    pieces.part(),
                    pieces.quantity(),
                    pieces.source().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    pieces.fromDepot(),
                    pieces.order(),
                    pieces.readyOn());
        }
    }

    private static List<InjectorRisk> risksOfDue(Plan plan) {
        Set<String> due = new HashSet<>();
        plan.dueItems().forEach(item -> due.add(item.truck() + "\n" + item.cylinder()));
        return plan.risks().stream()
                .filter(risk -> due.contains(risk.truck() + "\n" + risk.cylinder()))
                .toList();
    }
}
