package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;

/**
 * A plan whose sentences speak the site's units. Its figures stay km, litres and degrees C: who shows them converts them.
 * Plans are kept as the engine wrote them, so that a site that changes its units reads its old plans in the new ones.
 */
public final class PlanWords {
    private final SiteUnits units;

    private PlanWords(SiteUnits units) {
        this.units = units;
    }

    /** The plan itself where the site counts as the engine does. */
    public static Plan in(SiteUnits units, Plan plan) {
        return units.isMetric() ? plan : new PlanWords(units).of(plan);
    }

    private Plan of(Plan plan) {
        return new Plan(
                plan.today(),
                plan.firstWeek(),
                plan.weeks(),
                plan.cost(),
                plan.injectors(),
                plan.risks(),
                plan.lives(),
                plan.signEffects(),
                plan.inspections(),
                plan.expectedFailures(),
                dueItems(plan.dueItems()),
                plan.visits().stream().map(this::of).toList(),
                plan.reasons().stream().map(this::of).toList(),
                plan.unplanned().stream().map(this::of).toList(),
                plan.days(),
                plan.loads(),
                plan.parts(),
                plan.cores(),
                plan.claims(),
                plan.coolant(),
                plan.assumptions().stream().map(this::of).toList(),
                plan.safety(),
                plan.lifeChanges(),
                plan.failureBands(),
                plan.records());
    }

    private List<DueItem> dueItems(List<DueItem> dueItems) {
        return dueItems.stream().map(this::of).toList();
    }

    private DueItem of(DueItem item) {
        return new DueItem(
                item.truck(),
                item.depot(),
                item.cylinder(),
                item.kind(),
                item.task(),
                item.action(),
                units.sentence(item.evidence()),
                units.sentence(item.limit()),
                item.limitSource(),
                item.by(),
                item.faultCode(),
                item.chance12());
    }

    private Visit of(Visit visit) {
        return new Visit(
                visit.truck(),
                visit.depot(),
                visit.family(),
                visit.week(),
                visit.cylinders(),
                visit.steps(),
                visit.tasks(),
                visit.inspection(),
                visit.labourHours(),
                visit.drainedLitres(),
                dueItems(visit.dueItems()),
                units.sentence(visit.why()),
                visit.diagnosis());
    }

    private TruckReason of(TruckReason reason) {
        return new TruckReason(reason.truck(), reason.week(), reason.reason(), units.sentence(reason.words()));
    }

    private Unplanned of(Unplanned unplanned) {
        return new Unplanned(unplanned.truck(), unplanned.depot(), dueItems(unplanned.dueItems()), unplanned.reason());
    }

    private Assumption of(Assumption assumption) {
        return new Assumption(assumption.topic(), units.sentence(assumption.text()), assumption.source());
    }
}
