package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.replay.world.TruckWorld;
import dev.injectorplanner.core.replay.world.World;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Depots with their hours and shelves. Repairs after failures take their hours from the week after. */
final class Workshop {
    private static final int TRUCKS_A_SET = 10;

    private final World world;
    private final Map<String, Depot> depots = new LinkedHashMap<>();
    private final Map<String, WorkCosts> costs;
    private final Map<String, Shelf> shelves;
    private final Map<String, Double> owed = new HashMap<>();

    Workshop(World world) {
        this.world = world;
        world.site().depots().forEach(depot -> depots.put(depot.depot(), depot));
        costs = new HashMap<>();
        shelves = new TreeMap<>();
        Map<String, Integer> cylinders = new TreeMap<>();
        for (TruckWorld truck : world.trucks()) {
            cylinders.merge(key(truck), truck.cylinders(), Integer::sum);
            costs.computeIfAbsent(
                    truck.truck().depot() + "\n" + truck.engine().family(),
                    key -> new WorkCosts(
                            world.site(), depot(truck.truck().depot()), truck.engine(), WorkCosts.DOWNTIME_PER_DAY));
        }
        int place = 0;
        for (TruckWorld truck : world.trucks()) {
            if (!shelves.containsKey(key(truck))) {
                double sets = world.scenario().shop().shelfSets();
                int level = (int) Math.ceil(sets * cylinders.getOrDefault(key(truck), 0) / TRUCKS_A_SET);
                shelves.put(
                        key(truck),
                        new Shelf(
                                truck.truck().depot(),
                                partOf(truck),
                                place++,
                                sets == 0 ? 0 : Math.max(truck.cylinders(), level)));
            }
        }
    }

    private Workshop(Workshop other) {
        world = other.world;
        depots.putAll(other.depots);
        costs = other.costs;
        shelves = new TreeMap<>();
        other.shelves.forEach((key, shelf) -> shelves.put(key, shelf.copy()));
        owed.putAll(other.owed);
    }

    Workshop copy() {
        return new Workshop(this);
    }

    private static String key(TruckWorld truck) {
        return truck.truck().depot() + "\n" + truck.engine().injectorPart();
    }

    private Part partOf(TruckWorld truck) {
        String number = truck.engine().injectorPart();
        return world.site().parts().stream()
                .filter(part -> part.part().equals(number))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("injector part " + number + " of family "
                        + truck.engine().family() + " is not in the table of parts"));
    }

    Depot depot(String name) {
        Depot depot = depots.get(name);
        if (depot == null) {
            throw new IllegalArgumentException("no depot " + name + ", the names are " + depots.keySet());
        }
        return depot;
    }

    WorkCosts costsOf(TruckWorld truck) {
        return known(truck.truck().depot() + "\n" + truck.engine().family(), costs);
    }

    Shelf shelfOf(TruckWorld truck) {
        return known(key(truck), shelves);
    }

    private static <R> R known(String key, Map<String, R> rows) {
        R row = rows.get(key);
        if (row == null) {
            throw new IllegalArgumentException("nothing for " + key + ", the names are " + rows.keySet());
        }
        return row;
    }

    List<Shelf> shelves() {
        return List.copyOf(shelves.values());
    }

    /** A shelf by depot and part; null where no truck there has the part. */
    @Nullable
    Shelf findShelf(String depot, String part) {
        return shelves.get(depot + "\n" + part);
    }

    /** Plain hours of a depot in a week: its usual days, closed days and other changes counted. */
    double plainHours(Depot depot, int monday) {
        double hours = 0;
        for (int day = monday; day < monday + 7; day++) {
            LocalDate date = LocalDate.ofEpochDay(day);
            double usual = depot.workDays().contains(date.getDayOfWeek()) ? depot.labourHoursPerDay() : 0;
            hours += world.site().capacity().stream()
                    .filter(row ->
                            row.depot().equals(depot.depot()) && row.date().equals(date))
                    .mapToDouble(CapacityOverride::labourHours)
                    .findFirst()
                    .orElse(usual);
        }
        return hours;
    }

    /** Hours that repairs took and that the next week lacks. */
    void owe(String depot, double hours) {
        owed.merge(depot, hours, Double::sum);
    }

    double settle(String depot) {
        Double hours = owed.remove(depot);
        return hours == null ? 0 : hours;
    }
}
