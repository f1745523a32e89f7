package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Chance that at least one of the injectors to be replaced fails on the road before its visit. */
final class RoadRisk {
    private final DepotPlan plan;

    RoadRisk(DepotPlan plan) {
        this.plan = plan;
    }

    /** As planned and with the visits no sooner than a day: {@code 4.1 % to 9.8 %}. */
    String words(List<Visit> visits, LocalDate noSooner) {
        double now = chance(visits, LocalDate.MIN);
        double then = chance(visits, noSooner);
        String before = DisplayFormat.chance(now);
        String after = DisplayFormat.chance(then);
        return before.equals(after) ? "no change" : before + " to " + after;
    }

    private double chance(List<Visit> visits, LocalDate noSooner) {
        double none = 1;
        for (Visit visit : visits) {
            LocalDate start = DepotDays.find(plan.plan().days(), visit)
                    .map(laid -> laid.start().toLocalDate())
                    .orElse(visit.week().monday());
            LocalDate day = start.isBefore(noSooner) ? noSooner : start;
            long days = Math.max(0, ChronoUnit.DAYS.between(plan.today(), day));
            for (InjectorRisk risk : plan.risksOf(visit.truck())) {
                if (visit.cylinders().contains(risk.cylinder())) {
                    none *= 1 - risk.chanceWithin(days);
                }
            }
        }
        return 1 - none;
    }
}
