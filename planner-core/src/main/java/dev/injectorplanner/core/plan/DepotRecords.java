package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a depot's records lack, so that nobody takes a forecast of some trucks for one of all.
 *
 * @param depot the depot
 * @param trucks its trucks in service
 * @param noInjectors those of them without any injector on record, which are not forecast
 * @param someMissing those that have an injector on record in some cylinders only
 * @param silent those whose last reading is older than the site's limit, or that have none
 * @param noAccess engine families of its trucks without access steps
 * @param unknownFittings injectors that were in before the records began
 * @param staleDays a truck not read for more days than that is silent
 */
public record DepotRecords(
        String depot,
        int trucks,
        List<String> noInjectors,
        List<String> someMissing,
        List<Silent> silent,
        List<String> noAccess,
        int unknownFittings,
        int staleDays) {
    private static final int NAMED = 8;

    public DepotRecords {
        noInjectors = List.copyOf(noInjectors);
        someMissing = List.copyOf(someMissing);
        silent = List.copyOf(silent);
        noAccess = List.copyOf(noAccess);
    }

    /**
     * A truck without news.
     *
     * @param truck the truck
     * @param lastReading day of its last reading, or null where it has none
     */
    public record Silent(String truck, @Nullable LocalDate lastReading) {
        String words() {
            return truck + (lastReading == null ? " (never read)" : " since " + lastReading);
        }
    }

    /** Sentences about several depots as one; empty where nothing is missing. */
    static List<String> sentences(List<DepotRecords> depots) {
        List<String> all = new ArrayList<>();
        int trucks = depots.stream().mapToInt(DepotRecords::trucks).sum();
        List<String> none =
                depots.stream().flatMap(each -> each.noInjectors.stream()).toList();
        if (!none.isEmpty()) {
            all.add(
                    none.size() + " of " + Figures.count(trucks, "truck", "trucks")
                            + (none.size() == 1 ? " is" : " are") + " not forecast: no injectors on record ("
                            + first(none)
                            + "). Fix: load the table injectors; where nobody knows the day of fitting, enter \"before records\".");
        }
        List<String> some =
                depots.stream().flatMap(each -> each.someMissing.stream()).toList();
        if (!some.isEmpty()) {
            all.add(some.size() + " of " + Figures.count(trucks, "truck", "trucks")
                    + (some.size() == 1 ? " is" : " are")
                    + " forecast in part: cylinders without an injector on record (" + first(some) + ").");
        }
        silent(depots, all);
        List<String> families = depots.stream()
                .flatMap(each -> each.noAccess.stream())
                .distinct()
                .sorted()
                .toList();
        if (!families.isEmpty()) {
            all.add("No access steps for " + first(families)
                    + ": visits count no labour to reach the cylinders, and no coolant. Fix: load the table access.");
        }
        int unknown = depots.stream().mapToInt(DepotRecords::unknownFittings).sum();
        if (unknown > 0) {
            all.add(
                    Figures.count(unknown, "injector was", "injectors were")
                            + " fitted before the records began: forecast by the truck's meters, and left out of the life curves.");
        }
        return List.copyOf(all);
    }

    List<String> sentencesOf(String truck) {
        List<String> all = new ArrayList<>();
        if (noInjectors.contains(truck)) {
            all.add("Not forecast: no injectors on record. Fix: load them; where nobody knows the day of fitting, enter"
                    + " \"before records\".");
        }
        if (someMissing.contains(truck)) {
            all.add("Forecast in part: some cylinders have no injector on record.");
        }
        silent.stream()
                .filter(each -> each.truck.equals(truck))
                .forEach(each -> all.add(
                        each.lastReading == null
                                ? "No meter reading on record: nothing of it can be forecast."
                                : "Last read on " + each.lastReading
                                        + ": the meters of today are estimated, so its forecast is less certain."));
        return all;
    }

    private static void silent(List<DepotRecords> depots, List<String> to) {
        List<String> silent = depots.stream()
                .flatMap(each -> each.silent.stream())
                .map(Silent::words)
                .toList();
        if (!silent.isEmpty()) {
            int days = depots.get(0).staleDays;
            to.add("No meter reading for more than " + days + " days: " + first(silent)
                    + ". Their meters are estimated, so their forecasts are less certain. Fix: load their readings.");
        }
    }

    private static String first(List<String> names) {
        String first = names.stream().limit(NAMED).collect(Collectors.joining(", "));
        return names.size() > NAMED ? first + " and " + (names.size() - NAMED) + " more" : first;
    }
}
