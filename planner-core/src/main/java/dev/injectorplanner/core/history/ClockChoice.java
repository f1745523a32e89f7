package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.life.NoEstimateException;
import dev.injectorplanner.core.life.WeibullFit;
import java.util.List;

/**
 * Distance or hours, by likelihood on the same units. A likelihood of ages in km and one of ages in hours are densities on
 * different scales; both are turned into densities in calendar time by the pace of each failed unit, f(age) x d age / d
 * time, so what decides is logL(km) - logL(hours) + sum over failures of log(km a hour). A unit's mean pace since fitting
 * stands for its pace at failure. Source: change of variables; scales of life as in Farewell and Cox (1979), A note on
 * multiple time scales in life testing, Applied Statistics 28:73-75.
 */
final class ClockChoice {
    /**
     * Hours are taken only where they fit better by this much log-likelihood, strong evidence in the words of Kass and Raftery
     * (1995), Journal of the American Statistical Association 90:773-795; else it stays with distance.
     */
    static final double CLEARLY_BETTER = 3;

    private final String part;
    private final List<UnitLife> units;
    private final RemainingDelay remaining;

    ClockChoice(String part, List<UnitLife> units, RemainingDelay remaining) {
        this.part = part;
        this.units = units;
        this.remaining = remaining;
    }

    Clock choose() {
        long withKm = units.stream().filter(unit -> unit.km() != null).count();
        long withHours = units.stream().filter(unit -> unit.hours() != null).count();
        Clock known = withHours > 2 * withKm ? Clock.HOURS : Clock.DISTANCE;
        if (withKm < 0.5 * withHours || withHours < 0.5 * withKm) {
            return known;
        }
        return distanceOverHours() < -CLEARLY_BETTER ? Clock.HOURS : known;
    }

    /** Log-likelihood of distance less that of hours, both in calendar time; 0 where the records cannot say. */
    double distanceOverHours() {
        double better = 0;
        for (Origin origin : Origin.KNOWN) {
            List<UnitLife> both = units.stream()
                    .filter(unit -> unit.origin() == origin && unit.km() != null && unit.hours() != null)
                    .toList();
            long events = both.stream().filter(UnitLife::failedOrWould).count();
            if (events >= LifeBook.ENOUGH_FOR_PRIOR) {
                better += ofGroup(both);
            }
        }
        return better;
    }

    private double ofGroup(List<UnitLife> both) {
        try {
            double km = WeibullFit.of(PartFit.records(both, Clock.DISTANCE, remaining.of(part, Clock.DISTANCE)))
                    .logLikelihood();
            double hours = WeibullFit.of(PartFit.records(both, Clock.HOURS, remaining.of(part, Clock.HOURS)))
                    .logLikelihood();
            return km
                    - hours
                    + both.stream()
                            .filter(UnitLife::failedOrWould)
                            .mapToDouble(ClockChoice::logPace)
                            .sum();
        } catch (NoEstimateException unfit) {
            return 0;
        }
    }

    private static double logPace(UnitLife unit) {
        Span km = unit.km();
        Span hours = unit.hours();
        return km == null || hours == null ? 0 : Math.log(km.exit() / hours.exit());
    }
}
