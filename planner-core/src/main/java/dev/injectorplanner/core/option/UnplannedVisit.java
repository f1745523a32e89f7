package dev.injectorplanner.core.option;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.EngineFamily;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The old question of a truck that stands in the bay anyway: that one, the bank, or all? The same sum as for planned
 * visits, but what has failed is done in any case, and of the shared access only what must be opened in addition counts.
 */
public final class UnplannedVisit {
    private final EngineFamily family;
    private final List<AccessStep> steps;
    private final CylinderSets sets;
    private final Rates rates;
    private final Map<Integer, CylinderPrice> prices = new LinkedHashMap<>();

    /**
     * @param steps access steps of the family, in order
     * @param prices the cylinders that work still, priced for this week
     */
    public UnplannedVisit(EngineFamily family, List<AccessStep> steps, Rates rates, List<CylinderPrice> prices) {
        this.family = family;
        this.steps = List.copyOf(steps);
        this.sets = new CylinderSets(family, steps);
        this.rates = rates;
        prices.forEach(price -> this.prices.put(price.cylinder(), price));
    }

    /**
     * A set that is worth looking at.
     *
     * @param name what a person calls it
     * @param cylinders all that would be done, what has failed included, ascending
     * @param labourHours labour beyond what the failed ones and the opened steps take anyway
     * @param drainedLitres coolant beyond what is out anyway
     * @param sharedCost cost of what must be opened in addition
     * @param downtime cost of standing longer
     * @param gains cost of the other cylinders now against leaving them
     */
    public record Choice(
            String name,
            List<Integer> cylinders,
            double labourHours,
            double drainedLitres,
            double sharedCost,
            double downtime,
            double gains) {
        public Choice {
            cylinders = List.copyOf(cylinders);
        }

        /** Cost against doing only what must be done; below zero it saves. */
        public double cost() {
            return gains + sharedCost + downtime;
        }
    }

    /**
     * That alone, its bank, all, and the best of all sets.
     *
     * @param failed cylinders that must be done; may be empty where another repair opened the engine
     * @param opened names of access steps that are open anyway
     * @return the choices, each set once, the best first
     */
    public List<Choice> choices(Collection<Integer> failed, Collection<String> opened) {
        int must = CylinderSets.maskOf(failed);
        Map<Integer, String> named = new LinkedHashMap<>();
        named.put(must, failed.isEmpty() ? "none" : failed.size() == 1 ? "that one" : "only the failed ones");
        for (Bank bank : family.banks()) {
            int inBank = CylinderSets.maskOf(bank.cylinders());
            boolean opens = (inBank & must) != 0 || failed.isEmpty();
            if (opens && family.banks().size() > 1) {
                named.putIfAbsent((inBank & possible()) | must, "the " + bank.name() + " bank");
            }
        }
        named.putIfAbsent(possible() | must, "all");
        int best = best(must, opened);
        named.putIfAbsent(best, "the best set");
        List<Choice> choices = new ArrayList<>();
        named.forEach((set, name) -> choices.add(choice(name, set, must, opened)));
        choices.sort((a, b) -> a.cost() != b.cost()
                ? Double.compare(a.cost(), b.cost())
                : Integer.compare(a.cylinders().size(), b.cylinders().size()));
        return choices;
    }

    private int possible() {
        return CylinderSets.maskOf(prices.keySet());
    }

    private int best(int must, Collection<String> opened) {
        int best = must;
        double least = 0;
        int others = possible() & ~must;
        for (int extra = others; extra != 0; extra = (extra - 1) & others) {
            double cost = choice("", extra | must, must, opened).cost();
            if (cost < least - 1e-9) {
                least = cost;
                best = extra | must;
            }
        }
        return best;
    }

    private Choice choice(String name, int set, int must, Collection<String> opened) {
        double hours = 0;
        double litres = 0;
        double out = 0;
        for (AccessStep step : steps) {
            double drain = family.coolantLitres() * step.drainsCoolantPercent() / 100;
            if (opened.contains(step.step()) || serves(step, must)) {
                out = Math.max(out, drain);
            } else if (serves(step, set)) {
                hours += step.hours();
                litres = Math.max(litres, drain);
            }
        }
        double moreLitres = Math.max(0, litres - out);
        double sharedCost = hours * rates.labourPerHour() + moreLitres * rates.coolantPerLitre();
        double moreHours = hours + Integer.bitCount(set & ~must) * family.cylinderHours();
        double gains = CylinderSets.cylindersOf(set & ~must).stream()
                .mapToDouble(cylinder -> gain(cylinder))
                .sum();
        double downtime = rates.downtimePerDay() * moreHours / rates.bayHoursPerDay();
        return new Choice(name, CylinderSets.cylindersOf(set), moreHours, moreLitres, sharedCost, downtime, gains);
    }

    private double gain(int cylinder) {
        CylinderPrice price = prices.get(cylinder);
        return price == null ? 0 : price.gain(0);
    }

    private static boolean serves(AccessStep step, int set) {
        return CylinderSets.cylindersOf(set).stream().anyMatch(step::serves);
    }

    /** Labour of doing one set from a closed engine, hours. */
    public double labourHours(Collection<Integer> cylinders) {
        return sets.labourHours(CylinderSets.maskOf(cylinders));
    }

    /** Coolant of doing one set from a closed engine, litres. */
    public double drainedLitres(Collection<Integer> cylinders) {
        return sets.drainedLitres(CylinderSets.maskOf(cylinders));
    }
}
