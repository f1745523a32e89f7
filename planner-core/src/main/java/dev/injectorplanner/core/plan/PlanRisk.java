package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.Schedule;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;

/**
 * Failures to expect within the horizon when a schedule is followed: of each injector up to its visit, and from there of the
 * new one in its place; of those without a visit over the whole horizon. At most one failure a unit is counted.
 */
final class PlanRisk {
    private static final double DAYS_A_WEEK = 7;

    private final Draft draft;

    PlanRisk(Draft draft) {
        this.draft = draft;
    }

    double expectedFailures() {
        Map<String, PricedVisit> visits = new HashMap<>();
        for (Schedule.Choice choice : draft.schedule().choices()) {
            visits.put(choice.truck(), draft.choicesOf(choice.truck()).visitOf(choice.option()));
        }
        Learned learned = draft.learned();
        LocalDate end = learned.firstWeek().plus(draft.request().weeks()).monday();
        double sum = 0;
        for (InjectorRisk risk : learned.risk().risks()) {
            PricedVisit visit = visits.get(risk.truck());
            if (visit == null || !visit.cylinders().contains(risk.cylinder())) {
                sum += risk.chanceWithin(ChronoUnit.DAYS.between(learned.today(), end));
            } else {
                LocalDate begins = begins(visit.week());
                sum += risk.chanceWithin(ChronoUnit.DAYS.between(learned.today(), begins));
                sum += ofNew(risk, ChronoUnit.DAYS.between(begins, end));
            }
        }
        return sum;
    }

    private LocalDate begins(int week) {
        LocalDate monday = draft.learned().firstWeek().plus(week).monday();
        return monday.isBefore(draft.learned().today()) ? draft.learned().today() : monday;
    }

    private double ofNew(InjectorRisk old, long days) {
        FleetRisk risk = draft.learned().risk();
        PartLife life = risk.lives().of(old.part(), Origin.NEW);
        double perWeek =
                life.clock().of(draft.learned().usage().of(old.truck())).perWeek();
        return perWeek > 0 ? risk.lives().predictive(life, old.truck()).conditionalFailure(0, perWeek * days / DAYS_A_WEEK, 1) : 0;
    }
}
