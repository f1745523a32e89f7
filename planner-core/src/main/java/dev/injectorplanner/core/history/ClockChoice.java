package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.core.life.NoEstimateException;
import dev.injectorplanner.core.life.WeibullFit;
import dev.injectorplanner.core.life.WeibullLife;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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

    /**
     * And only where the gain is not that of a few trucks: one-sided 95 % of its own spread over trucks, since the lives of one
     * truck are not independent. Source: Vuong (1989), Econometrica 57:307-333, with trucks as the units.
     */
    private static final double SURE = 1.645;

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
        return hoursAreClearlyBetter() ? Clock.HOURS : known;
    }

    /** By enough, and by more than a few trucks with many failures make by chance. */
    private boolean hoursAreClearlyBetter() {
        Map<String, Double> byTruck = distanceOverHoursByTruck();
        double sum = 0;
        double squares = 0;
        for (double each : byTruck.values()) {
            sum += each;
            squares += each * each;
        }
        double error = Math.sqrt(Math.max(0, squares - sum * sum / Math.max(1, byTruck.size())));
        return sum < -CLEARLY_BETTER && sum < -SURE * error;
    }

    /** Log-likelihood of distance less that of hours, both in calendar time; 0 where the records cannot say. */
    double distanceOverHours() {
        return distanceOverHoursByTruck().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    private Map<String, Double> distanceOverHoursByTruck() {
        Map<String, Double> byTruck = new TreeMap<>();
        for (Origin origin : Origin.KNOWN) {
            List<UnitLife> both = units.stream()
                    .filter(unit -> unit.origin() == origin && unit.km() != null && unit.hours() != null)
                    .toList();
            long events = both.stream().filter(UnitLife::failedOrWould).count();
            if (events >= LifeBook.ENOUGH_FOR_PRIOR) {
                add(byTruck, both);
            }
        }
        return byTruck;
    }

    private void add(Map<String, Double> byTruck, List<UnitLife> both) {
        try {
            LifeRecords km = PartFit.records(both, Clock.DISTANCE, remaining.of(part, Clock.DISTANCE));
            LifeRecords hours = PartFit.records(both, Clock.HOURS, remaining.of(part, Clock.HOURS));
            WeibullLife byKm = WeibullFit.of(km).life();
            WeibullLife byHours = WeibullFit.of(hours).life();
            for (int i = 0; i < both.size(); i++) {
                UnitLife unit = both.get(i);
                double pace = unit.failedOrWould() ? logPace(unit) : 0;
                byTruck.merge(
                        unit.truck(), logLikelihood(byKm, km, i) - logLikelihood(byHours, hours, i) + pace, Double::sum);
            }
        } catch (NoEstimateException unfit) {
            // too little to tell the two apart
        }
    }

    private static double logLikelihood(WeibullLife life, LifeRecords records, int row) {
        double entry = records.entry(row);
        double exit = records.exit(row);
        double fails = records.isEvent(row) ? Math.log(life.hazard(exit)) : 0;
        return fails - life.cumulativeHazard(entry, exit - entry);
    }

    private static double logPace(UnitLife unit) {
        Span km = unit.km();
        Span hours = unit.hours();
        return km == null || hours == null ? 0 : Math.log(km.exit() / hours.exit());
    }
}
