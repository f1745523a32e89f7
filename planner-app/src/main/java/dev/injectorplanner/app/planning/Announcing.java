package dev.injectorplanner.app.planning;

import dev.injectorplanner.app.holds.HoldBook;
import dev.injectorplanner.app.planning.Planning.NothingToPlanException;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.plans.KeptVisit;
import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Announces visits of the plan in force: from then on they move only if it pays. */
public final class Announcing {
    private final KeptPlans plans;
    private final HoldBook holds;

    public Announcing(KeptPlans plans, HoldBook holds) {
        this.plans = plans;
        this.holds = holds;
    }

    /**
     * What was announced.
     *
     * @param trucks trucks of that week
     * @param added how many of them were not announced for it before
     */
    public record Announced(List<String> trucks, int added) {
        public Announced {
            trucks = List.copyOf(trucks);
        }
    }

    /**
     * Announces the visits of a week.
     *
     * @throws NothingToPlanException where no plan of that depot is in force
     */
    public Announced announce(String depot, IsoWeek week, Instant at, String by) {
        if (plans.findInForceId(depot).isEmpty()) {
            throw new NothingToPlanException(
                    "Depot " + depot + " has no plan in force. Mend: check the name, or plan with --keep first.");
        }
        Map<String, IsoWeek> visits = new TreeMap<>();
        plans.listVisits(depot).stream()
                .filter(visit -> visit.week().equals(week))
                .map(KeptVisit::truck)
                .forEach(truck -> visits.put(truck, week));
        return new Announced(List.copyOf(visits.keySet()), holds.announce(visits, at, by));
    }
}
