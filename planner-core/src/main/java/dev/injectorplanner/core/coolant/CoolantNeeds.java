package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;

/**
 * Coolant of planned visits, first cut: what is drained goes back in and a little is topped up, or new coolant of the
 * family's strength takes its place and the old is waste.
 */
public final class CoolantNeeds {
    /** Share of drained coolant that does not come back where it is reused: spills, hoses. Planner default. */
    public static final double TOP_UP_SHARE = 0.05;

    private CoolantNeeds() {}

    /**
     * Needs of the visits that drain, in their order.
     *
     * @param renew whether drained coolant is replaced rather than put back
     */
    public static List<CoolantNeed> of(FleetIndex index, List<Visit> visits, boolean renew) {
        return visits.stream()
                .filter(visit -> visit.drainedLitres() > 0)
                .map(visit -> need(index.family(visit.family()), visit, renew))
                .toList();
    }

    private static CoolantNeed need(EngineFamily family, Visit visit, boolean renew) {
        double drained = visit.drainedLitres();
        double filled = renew ? drained : drained * TOP_UP_SHARE;
        double concentrate = filled * family.glycolPercent() / 100;
        return new CoolantNeed(
                visit.depot(),
                visit.week(),
                visit.truck(),
                family.coolantLitres(),
                drained,
                family.glycolPercent(),
                Figures.tidy(concentrate),
                Figures.tidy(filled - concentrate),
                renew ? drained : 0,
                !renew);
    }
}
