package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.DepotPartKey;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the risk model says of the injectors in service, as far as parts need it. */
public interface FailureForecast {
    /** No forecast yet: nothing is kept for unplanned failures. */
    FailureForecast NONE = new FailureForecast() {
        @Override
        public boolean known() {
            return false;
        }

        @Override
        public double[] chancesWithin(String depot, String part, int days) {
            return new double[0];
        }
    };

    /** Whether there is a forecast at all. */
    default boolean known() {
        return true;
    }

    /**
     * Chance of each injector to fail in service within this many days from today.
     *
     * @param depot depot of the trucks
     * @param part part that will replace the injectors
     * @param days 0 or more
     * @return a chance, 0 to 1, for each injector of that depot and part; in any order, but the same one every time
     */
    double[] chancesWithin(String depot, String part, int days);

    /** A forecast at rates that stay as they are for the weeks a part takes to come. */
    static FailureForecast ofRates(List<FailureChance> chances) {
        Map<DepotPartKey, List<FailureChance>> byShelf = chances.stream()
                .collect(Collectors.groupingBy(
                        each -> new DepotPartKey(each.depot(), each.part()), TreeMap::new, Collectors.toList()));
        return (depot, part, days) -> byShelf.getOrDefault(new DepotPartKey(depot, part), List.of()).stream()
                .mapToDouble(each -> each.within(days))
                .toArray();
    }
}
