package dev.injectorplanner.app.planning;

import dev.injectorplanner.app.holds.HoldBook;
import dev.injectorplanner.app.planning.Planning.NothingToPlanException;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.plans.KeptVisit;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.visit.Visit;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Announces visits of the plan in force: from then on they move only if it pays. */
public final class VisitConfirmation {
    private final KeptPlans plans;
    private final HoldBook holds;

    public VisitConfirmation(KeptPlans plans, HoldBook holds) {
        this.plans = plans;
        this.holds = holds;
    }

    /**
     * What was confirmed.
     *
     * @param trucks trucks of that week
     * @param added how many of them were not confirmed for it before
     */
    public record Confirmed(List<String> trucks, int added) {
        public Confirmed {
            trucks = List.copyOf(trucks);
        }
    }

    /**
     * Announces the visits of a week.
     *
     * @throws NothingToPlanException where no plan of that depot is in force
     */
    public Confirmed confirm(String depot, IsoWeek week, Instant at, String by) {
        if (plans.findInForceId(depot).isEmpty()) {
            throw new NothingToPlanException(
                    "Depot " + depot + " has no plan in force. Fix: check the name, or run plan --keep first.");
        }
        return confirm(
                KeptVisit.mainOnes(plans.listVisits(depot)).stream()
                        .filter(visit -> visit.week().equals(week))
                        .map(KeptVisit::truck),
                week,
                at,
                by);
    }

    /** Announces the visits of a week of that very plan, be another in force by now or not. */
    public Confirmed confirm(Plan plan, String depot, IsoWeek week, Instant at, String by) {
        return confirm(
                plan.visits().stream()
                        .filter(visit ->
                                visit.depot().equals(depot) && visit.week().equals(week))
                        .filter(plan::isMain)
                        .map(Visit::truck),
                week,
                at,
                by);
    }

    private Confirmed confirm(Stream<String> trucks, IsoWeek week, Instant at, String by) {
        Map<String, IsoWeek> visits = new TreeMap<>();
        trucks.forEach(truck -> visits.put(truck, week));
        return new Confirmed(List.copyOf(visits.keySet()), holds.confirm(visits, at, by));
    }
}
