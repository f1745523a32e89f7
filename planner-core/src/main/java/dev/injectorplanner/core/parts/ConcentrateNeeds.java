package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Containers of coolant concentrate that planned visits draw, by depot and week, against stock and open order lines. A
 * container that is begun serves the next visit; packs and whole containers are rounded when they are ordered.
 */
final class ConcentrateNeeds {
    private static final double ROUNDING = 1e-9;

    private final Supply supply;

    ConcentrateNeeds(Supply supply) {
        this.supply = supply;
    }

    /** What the coolant of the visits asks for; nothing where no part stands for concentrate. */
    List<PartNeed> of(CoolantPlan coolant, Part concentrate) {
        Map<String, TreeMap<IsoWeek, Drawn>> byDepot = new TreeMap<>();
        coolant.needs().stream()
                .filter(need -> need.concentrateLitres() > 0)
                .forEach(need -> byDepot.computeIfAbsent(need.depot(), depot -> new TreeMap<>())
                        .computeIfAbsent(need.week(), week -> new Drawn())
                        .add(need.truck(), need.concentrateLitres()));
        List<PartNeed> rows = new ArrayList<>();
        double each = coolant.rules().concentrateContainerLitres();
        byDepot.forEach((depot, weeks) -> addDepot(rows, new DepotPartKey(depot, concentrate.part()), weeks, each));
        return rows;
    }

    private static final class Drawn {
        double litres;
        final TreeSet<String> trucks = new TreeSet<>();

        void add(String truck, double more) {
            litres += more;
            trucks.add(truck);
        }
    }

    private void addDepot(List<PartNeed> rows, DepotPartKey shelf, TreeMap<IsoWeek, Drawn> weeks, double each) {
        double drawnBefore = 0;
        double ordered = 0;
        for (Map.Entry<IsoWeek, Drawn> entry : weeks.entrySet()) {
            IsoWeek week = entry.getKey();
            LocalDate ready = supply.countedUntil(week);
            double containers = entry.getValue().litres / each;
            double before = supply.until(shelf, ready) + ordered - drawnBefore;
            double gap = containers - Math.max(0, before);
            double missing = gap > ROUNDING ? Figures.tidy(gap) : 0;
            rows.add(new PartNeed(
                    shelf.depot(),
                    week,
                    shelf.part(),
                    Figures.tidy(containers),
                    Figures.tidy(containers),
                    Figures.tidy(before),
                    supply.arriving(shelf, supply.dayBefore(week), ready),
                    missing,
                    missing > 0 ? supply.orderBy(shelf.part(), week.monday()) : null,
                    List.copyOf(entry.getValue().trucks),
                    0));
            ordered += missing;
            drawnBefore += containers;
        }
    }
}
