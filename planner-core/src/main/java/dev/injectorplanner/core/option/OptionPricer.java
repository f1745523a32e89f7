package dev.injectorplanner.core.option;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Prices the ways to treat one truck. Against no visit, cylinders B in week t cost the sum over B of [D(t) - D later -
 * share] plus the cost of the union of access steps, downtime, and ride-along tasks. Source: grouping by deferral costs,
 * Wildeman, Dekker and Smit (1997), European Journal of Operational Research 99:530-551; the shares inside the planned
 * costs are taken out again, since the union is paid in full.
 */
public final class OptionPricer {
    private final CylinderSets sets;
    private final Rates rates;
    private final List<CylinderPrice> prices;
    private final List<RideAlongTask> rideAlongs;
    private final int weeks;

    /**
     * @param prices cylinders that may be replaced, each for the same weeks
     * @param rideAlongs inspection and tasks that are near
     * @param weeks weeks in the horizon
     */
    public OptionPricer(
            CylinderSets sets, Rates rates, List<CylinderPrice> prices, List<RideAlongTask> rideAlongs, int weeks) {
        this.sets = sets;
        this.rates = rates;
        this.prices = List.copyOf(prices);
        this.rideAlongs = List.copyOf(rideAlongs);
        this.weeks = weeks;
    }

    /**
     * Ways that cost less than no visit, or hold work that must be done: for each week the best few sets, the rideAlongs alone, and each task that makes a
     * visit by itself. Of the sets of a week those are kept of which none takes fewer hours at less cost.
     *
     * @param kept the most sets a week
     * @return by week, cheapest first within a week
     */
    public List<PricedVisit> worthwhile(int kept) {
        List<PricedVisit> all = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            List<PricedVisit> ofWeek = bestSets(week, kept);
            rideAlongs.stream()
                    .filter(rideAlong -> !rideAlong.rides())
                    .map(only(week))
                    .forEach(ofWeek::add);
            List<RideAlongTask> along = along(week, 0);
            if (!along.isEmpty()) {
                ofWeek.add(price(week, 0, along));
            }
            ofWeek.removeIf(visit -> !holdsMust(visit) && visit.cost() >= 0);
            ofWeek.sort(Comparator.comparingDouble(PricedVisit::cost).thenComparingInt(PricedVisit::set));
            all.addAll(ofWeek);
        }
        return all;
    }

    private static boolean holdsMust(PricedVisit visit) {
        return visit.rideAlongs().stream().anyMatch(RideAlongTask::must);
    }

    private Function<RideAlongTask, PricedVisit> only(int week) {
        return rideAlong -> price(week, 0, withMust(rideAlong));
    }

    private List<RideAlongTask> withMust(RideAlongTask rideAlong) {
        return Stream.concat(rideAlongs.stream().filter(RideAlongTask::must), Stream.of(rideAlong))
                .toList();
    }

    /** The cheapest set of a week, whatever it costs; rideAlongs that pay come along. */
    public PricedVisit best(int week) {
        return bestSets(week, 1).get(0);
    }

    /** The cheapest set of the whole horizon, whatever it costs; empty where no cylinder has a price. */
    public Optional<PricedVisit> leastOf() {
        if (prices.isEmpty()) {
            return Optional.empty();
        }
        return IntStream.range(0, weeks).mapToObj(this::best).min(Comparator.comparingDouble(PricedVisit::cost));
    }

    /** A given set in a week, with the rideAlongs that pay. */
    public PricedVisit price(int week, int set) {
        return price(week, set, along(week, set));
    }

    /** Cylinders that have a price, ascending. */
    public List<Integer> pricedCylinders() {
        return prices.stream().map(CylinderPrice::cylinder).sorted().toList();
    }

    /** Work beside the cylinders that is near. */
    public List<RideAlongTask> rideAlongs() {
        return rideAlongs;
    }

    /** Weeks priced. */
    public int weeks() {
        return weeks;
    }

    private List<RideAlongTask> along(int week, int set) {
        return rideAlongs.stream()
                .filter(rideAlong -> rideAlong.rides() && (rideAlong.must() || rideAlong.addedIn(week, set, rates) < 0))
                .toList();
    }

    /**
     * The undominated sets of a week, at most {@code kept}: the cheapest, then the cheapest of those that take fewer
     * hours, and so on. Of equal ones the one with the lower mask.
     */
    private List<PricedVisit> bestSets(int week, int kept) {
        double[] costs = costs(week);
        List<PricedVisit> best = new ArrayList<>();
        double below = Double.POSITIVE_INFINITY;
        while (best.size() < kept) {
            int cheapest = 0;
            for (int set = 1; set < costs.length; set++) {
                if (sets.labourHours(set) < below
                        && costs[set] < Double.POSITIVE_INFINITY
                        && (cheapest == 0 || costs[set] < costs[cheapest])) {
                    cheapest = set;
                }
            }
            if (cheapest == 0) {
                break;
            }
            below = sets.labourHours(cheapest) - 1e-9;
            best.add(price(week, cheapest));
        }
        return best;
    }

    /** Cost of every set with what rides along; infinite where a set holds a cylinder that has no price. */
    private double[] costs(int week) {
        double[] gain = new double[sets.cylinders()];
        Arrays.fill(gain, Double.POSITIVE_INFINITY);
        prices.forEach(price -> gain[price.cylinder() - 1] = price.gain(week));
        double[] costs = new double[sets.count()];
        double[] gains = new double[sets.count()];
        for (int set = 1; set < costs.length; set++) {
            gains[set] = gains[set & (set - 1)] + gain[Integer.numberOfTrailingZeros(set)];
            costs[set] =
                    gains[set] + sets.sharedCost(set, rates) + rates.downtime(sets.labourHours(set)) + added(week, set);
        }
        return costs;
    }

    private double added(int week, int set) {
        double sum = 0;
        for (RideAlongTask task : rideAlongs) {
            if (task.rides()) {
                double added = task.addedIn(week, set, rates);
                sum += task.must() ? added : Math.min(0, added);
            }
        }
        return sum;
    }

    /** A given set in a week with given rideAlongs; nothing at all costs nothing. */
    public PricedVisit price(int week, int set, List<RideAlongTask> along) {
        if (set == 0 && along.isEmpty()) {
            return new PricedVisit(week, 0, List.of(), 0, 0, 0, 0, 0, 0, 0);
        }
        double gains = 0;
        double weights = along.stream().mapToDouble(task -> task.weightIn(week)).sum();
        for (CylinderPrice price : prices) {
            if ((set & 1 << (price.cylinder() - 1)) != 0) {
                gains += price.gain(week);
                weights += price.late(week);
            }
        }
        double rideAlongHours =
                along.stream().mapToDouble(RideAlongTask::labourHours).sum();
        double hours = sets.labourHours(set) + rideAlongHours;
        double sharedCost = set == 0 ? rates.bayPerVisit() : sets.sharedCost(set, rates);
        double rideAlongCost = rideAlongHours * rates.labourPerHour()
                + along.stream()
                        .mapToDouble(rideAlong -> rideAlong.costIn(week, set))
                        .sum();
        return new PricedVisit(
                week,
                set,
                along,
                hours,
                rates.truckDays(hours),
                gains,
                sharedCost,
                rates.downtime(hours),
                rideAlongCost,
                weights);
    }
}
