package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.truth.Draws;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Makes up a fleet of any size with a known truth. Injectors wear by the Weibull of their part and origin in km; trucks
 * run by season and chance and are parked at times; defects show in faults and tests before they fail; the workshop
 * finds some in time, replaces others at a planned distance, and others along while the engine is open.
 */
public final class FleetGenerator {
    private static final double ON_ROAD = 0.85;
    private static final BigDecimal DOWNTIME = new BigDecimal("420");
    private static final long SHELVES = -1;

    private final FleetSpec spec;

    public FleetGenerator(FleetSpec spec) {
        this.spec = spec;
    }

    static String groupName(Depot depot, EngineUse use) {
        return depot.depot() + " " + use.duty();
    }

    /** The trucks one after the other, each drawn by itself: nothing of one is kept for the next. */
    public Stream<TruckHistory> trucks() {
        return IntStream.rangeClosed(1, spec.trucks()).mapToObj(this::truck);
    }

    private TruckHistory truck(int number) {
        Draws draws = Draws.of(~spec.seed(), number);
        Depot depot = depot(draws);
        EngineUse use = use(draws);
        int digits = Math.max(3, Integer.toString(spec.trucks()).length());
        String name = String.format(Locale.ROOT, "T%0" + digits + "d", number);
        return new TruckMaker(spec, depot, use, name, number).make();
    }

    private Depot depot(Draws draws) {
        List<Depot> depots = spec.catalogue().depots();
        double at = draws.uniform() * depots.stream().mapToInt(Depot::bays).sum();
        for (Depot depot : depots) {
            at -= depot.bays();
            if (at < 0) {
                return depot;
            }
        }
        return depots.get(depots.size() - 1);
    }

    private EngineUse use(Draws draws) {
        List<EngineUse> uses = spec.catalogue().uses();
        double at =
                draws.uniform() * uses.stream().mapToDouble(EngineUse::share).sum();
        for (EngineUse use : uses) {
            at -= use.share();
            if (at < 0) {
                return use;
            }
        }
        return uses.get(uses.size() - 1);
    }

    /** The whole fleet with its truth, in memory: about 1 GiB for 10,000 trucks with 5 million readings. */
    public GeneratedFleet generate() {
        List<TruckHistory> trucks = trucks().toList();
        Catalogue catalogue = spec.catalogue();
        FleetSnapshot snapshot = new FleetSnapshot(
                catalogue.depots(),
                catalogue.capacity(),
                catalogue.families(),
                catalogue.access(),
                dutyGroups(trucks),
                trucks.stream().map(TruckHistory::truck).toList(),
                trucks.stream().flatMap(truck -> truck.injectors().stream()).toList(),
                trucks.stream().flatMap(truck -> truck.readings().stream()).toList(),
                trucks.stream().flatMap(truck -> truck.faults().stream()).toList(),
                trucks.stream().flatMap(truck -> truck.tests().stream()).toList(),
                catalogue.parts(),
                catalogue.jobParts(),
                stock(),
                purchaseLines(),
                trucks.stream().flatMap(truck -> truck.away().stream()).toList(),
                catalogue.intervals(),
                catalogue.rules());
        return new GeneratedFleet(
                snapshot,
                new FleetTruth(
                        catalogue.lives(),
                        trucks.stream().flatMap(truck -> truck.truth().stream()).toList()));
    }

    private static List<DutyGroup> dutyGroups(List<TruckHistory> trucks) {
        Map<String, Integer> sizes = new TreeMap<>();
        for (TruckHistory history : trucks) {
            Truck truck = history.truck();
            if (truck.dutyGroup() != null) {
                sizes.merge(truck.dutyGroup(), 1, Integer::sum);
            }
        }
        List<DutyGroup> groups = new ArrayList<>();
        sizes.forEach((name, size) ->
                groups.add(new DutyGroup(name, Math.min(size - 1, (int) Math.floor(ON_ROAD * size)), DOWNTIME)));
        return groups;
    }

    /** Some of everything on every shelf, by the depot's bays; dear parts are kept short. */
    private List<StockLine> stock() {
        Draws draws = Draws.of(spec.seed(), SHELVES);
        Draws cans = Draws.of(spec.seed(), SHELVES - 2);
        List<StockLine> lines = new ArrayList<>();
        for (Depot depot : spec.catalogue().depots()) {
            for (Part part : spec.catalogue().parts()) {
                int pieces = pieces(part.kind(), draws, cans);
                lines.add(new StockLine(depot.depot(), part.part(), pieces * depot.bays()));
            }
        }
        return lines;
    }

    private static int pieces(PartKind kind, Draws draws, Draws cans) {
        return switch (kind) {
            case INJECTOR -> draws.whole(1, 5);
            case COOLANT -> cans.whole(0, 1);
            default -> draws.whole(8, 40);
        };
    }

    /** For each depot and injector part an order that came and one that is on its way. */
    private List<PurchaseLine> purchaseLines() {
        Draws draws = Draws.of(spec.seed(), SHELVES - 1);
        List<PurchaseLine> lines = new ArrayList<>();
        int order = 4_100;
        for (Depot depot : spec.catalogue().depots()) {
            for (Part part : spec.catalogue().parts()) {
                if (part.kind() == PartKind.INJECTOR) {
                    int came = draws.whole(20, 60);
                    lines.add(new PurchaseLine(
                            "PO-" + order++,
                            part.part(),
                            depot.depot(),
                            draws.whole(2, 8),
                            spec.today().minusDays(came),
                            spec.today().minusDays(came - 2L)));
                    lines.add(new PurchaseLine(
                            "PO-" + order++,
                            part.part(),
                            depot.depot(),
                            draws.whole(2, 8),
                            spec.today().plusDays(draws.whole(4, 40)),
                            null));
                }
            }
        }
        return lines;
    }
}
