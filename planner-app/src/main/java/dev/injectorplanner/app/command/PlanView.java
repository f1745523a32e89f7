package dev.injectorplanner.app.command;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.condition.SignEffect;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.plan.Assumption;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.risk.ExpectedFailures;
import dev.injectorplanner.core.risk.FamilyInspection;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What {@code plan --json} prints: the plan without the ages and risks of injectors that are not due. */
record PlanView(
        LocalDate today,
        IsoWeek firstWeek,
        int weeks,
        List<Visit> visits,
        List<Unplanned> unplanned,
        List<DueFinding> findings,
        List<InjectorRisk> risks,
        List<PartLife> lives,
        List<SignEffect> signEffects,
        List<FamilyInspection> inspections,
        List<ExpectedFailures> expectedFailures,
        List<WeekLoad> loads,
        List<PartNeed> partNeeds,
        List<CoolantNeed> coolantNeeds,
        List<Assumption> assumptions) {
    static PlanView of(Plan plan) {
        return new PlanView(
                plan.today(),
                plan.firstWeek(),
                plan.weeks(),
                plan.visits(),
                plan.unplanned(),
                plan.findings(),
                risksOfDue(plan),
                plan.lives(),
                plan.signEffects(),
                plan.inspections(),
                plan.expectedFailures(),
                plan.loads(),
                plan.partNeeds(),
                plan.coolantNeeds(),
                plan.assumptions());
    }

    private static List<InjectorRisk> risksOfDue(Plan plan) {
        Set<String> due = new HashSet<>();
        plan.findings().forEach(finding -> due.add(finding.truck() + "\n" + finding.cylinder()));
        return plan.risks().stream()
                .filter(risk -> due.contains(risk.truck() + "\n" + risk.cylinder()))
                .toList();
    }
}
