package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.replay.scenario.SiteTables;
import dev.injectorplanner.core.replay.world.TruckWorld;
import dev.injectorplanner.core.replay.world.World;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The tables of one fleet as they grow: the only thing of a replay that the planner sees. */
final class RunRecords {
    private static final double ON_ROAD = 0.8;
    private static final int PLENTY = 5_000;

    private final World world;
    private final List<TruckRecords> trucks;

    private RunRecords(World world, List<TruckRecords> trucks) {
        this.world = world;
        this.trucks = trucks;
    }

    static RunRecords begin(World world, long seed) {
        double wrong = world.scenario().shop().wrongFoundShare();
        List<TruckRecords> trucks = new ArrayList<>();
        for (TruckWorld truck : world.trucks()) {
            trucks.add(new TruckRecords(truck, seed, wrong));
        }
        return new RunRecords(world, trucks);
    }

    RunRecords copy() {
        return new RunRecords(
                world, new ArrayList<>(trucks.stream().map(TruckRecords::copy).toList()));
    }

    TruckRecords of(int truck) {
        return trucks.get(truck);
    }

    FleetSnapshot snapshot(int day, List<Shelf> shelves) {
        List<Truck> rows = new ArrayList<>();
        List<FittedInjector> injectors = new ArrayList<>();
        List<Reading> readings = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        List<CylinderTest> tests = new ArrayList<>();
        for (int t = 0; t < trucks.size(); t++) {
            if (day >= world.trucks().get(t).firstDay()) {
                rows.add(trucks.get(t).row(day));
                trucks.get(t).addTo(injectors, readings, faults, tests);
            }
        }
        SiteTables site = world.site();
        return new FleetSnapshot(
                site.depots(),
                site.capacity(),
                site.families(),
                site.access(),
                dutyGroups(day),
                rows,
                injectors,
                readings,
                faults,
                tests,
                site.parts(),
                site.jobParts(),
                stock(shelves),
                lines(shelves),
                List.of(),
                site.intervals(),
                site.rules());
    }

    private List<DutyGroup> dutyGroups(int day) {
        Map<String, Integer> sizes = new TreeMap<>();
        for (TruckWorld truck : world.trucks()) {
            String group = truck.truck().dutyGroup();
            if (group != null) {
                sizes.merge(group, truck.inServiceOn(day) ? 1 : 0, Integer::sum);
            }
        }
        List<DutyGroup> groups = new ArrayList<>();
        sizes.forEach((name, size) -> groups.add(
                new DutyGroup(name, (int) Math.floor(ON_ROAD * size), BigDecimal.valueOf(WorkCosts.DOWNTIME_PER_DAY))));
        return groups;
    }

    /** Injectors as they lie on the shelves; of small parts there is always enough. */
    private List<StockLine> stock(List<Shelf> shelves) {
        List<StockLine> lines = new ArrayList<>();
        shelves.forEach(shelf -> lines.add(new StockLine(shelf.depot, shelf.part.part(), shelf.onHand())));
        for (Part part : world.site().parts()) {
            if (part.kind() != PartKind.INJECTOR) {
                world.site().depots().forEach(depot -> lines.add(new StockLine(depot.depot(), part.part(), PLENTY)));
            }
        }
        return lines;
    }

    private static List<PurchaseLine> lines(List<Shelf> shelves) {
        return shelves.stream().flatMap(shelf -> shelf.lines().stream()).toList();
    }
}
