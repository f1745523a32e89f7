package dev.injectorplanner.core.replay.world;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.SiteTables;
import dev.injectorplanner.core.truth.Draws;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** One fleet of a scenario: the same seed gives the same trucks, lives and noise. */
public final class World {
    /** Monday on which planning begins in every scenario. */
    public static final LocalDate BEGIN = LocalDate.of(2026, 3, 2);

    private static final long SHOP = 31;
    private static final int WORK_DAYS = 5;

    private final long seed;
    private final Scenario scenario;
    private final SiteTables site;
    private final List<TruckWorld> trucks;
    private final int begin;
    private final int end;

    /** @param trucks the fleet's trucks, from {@link TruckWorldMaker} or from a snapshot */
    World(long seed, Scenario scenario, SiteTables site, List<TruckWorld> trucks, LocalDate begin, int weeks) {
        this.seed = seed;
        this.scenario = scenario;
        this.site = site;
        this.trucks = List.copyOf(trucks);
        this.begin = (int) begin.toEpochDay();
        this.end = this.begin + 7 * weeks;
    }

    /**
     * A fleet of a scenario.
     *
     * @param seed the same gives the same fleet
     * @param weeks weeks of planning
     */
    public static World of(Scenario scenario, long seed, int weeks) {
        TruckWorldMaker maker = new TruckWorldMaker(scenario, seed, BEGIN, weeks);
        List<TruckWorld> trucks = new ArrayList<>();
        IntStream.range(0, scenario.trucks()).forEach(number -> trucks.add(maker.make(number)));
        return new World(seed, scenario, sized(scenario), trucks, BEGIN, weeks);
    }

    /**
     * Real trucks from a Monday on.
     *
     * @param trucks the trucks as they stand then
     * @param weeks weeks to play
     */
    public static World from(Scenario scenario, List<TruckToday> trucks, LocalDate monday, int weeks, long seed) {
        TodayMaker maker = new TodayMaker(scenario, seed, monday, weeks);
        List<TruckWorld> worlds = new ArrayList<>();
        for (int number = 0; number < trucks.size(); number++) {
            worlds.add(maker.make(number, trucks.get(number)));
        }
        return new World(seed, scenario, scenario.site(), worlds, monday, weeks);
    }

    /** Depots with the hours that their trucks ask for. */
    private static SiteTables sized(Scenario scenario) {
        SiteTables site = scenario.site();
        double perWeek = scenario.shop().hoursPerTruckWeek();
        if (perWeek == 0) {
            return site;
        }
        double perDay = perWeek * scenario.trucks() / site.depots().size() / WORK_DAYS;
        List<Depot> depots = site.depots().stream()
                .map(depot -> new Depot(
                        depot.depot(),
                        depot.name(),
                        depot.timeZone(),
                        Math.max(1, (int) Math.ceil(perDay / 8)) + 1,
                        Math.max(4, perDay),
                        depot.workDays(),
                        depot.labourPerHour(),
                        depot.overtimePerHour(),
                        Math.max(4, perDay)))
                .toList();
        return new SiteTables(
                depots,
                site.capacity(),
                site.families(),
                site.access(),
                site.parts(),
                site.jobParts(),
                site.intervals(),
                site.rules());
    }

    public Scenario scenario() {
        return scenario;
    }

    public SiteTables site() {
        return site;
    }

    public List<TruckWorld> trucks() {
        return trucks;
    }

    /** First day of planning, a Monday, as day of the epoch. */
    public int begin() {
        return begin;
    }

    /** The day after the last one. */
    public int end() {
        return end;
    }

    /** Draws for what the shop does with one truck (or shelf) in one week, the same under every policy. */
    public Draws shopDraws(int which, int week, int subject) {
        return Draws.keyed(seed, SHOP, which, week, subject);
    }
}
