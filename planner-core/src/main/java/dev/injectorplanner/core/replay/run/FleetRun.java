package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.replay.world.TruckWorld;
import dev.injectorplanner.core.replay.world.World;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One fleet at one moment of a replay. A run that has been brought to the day on which planning begins is copied for each
 * policy, so that all begin with the same fleet and the same records.
 */
public final class FleetRun implements OracleView {
    private static final int NOT_YET = -1;

    final World world;
    final List<TruckWorld> trucks;
    final Position[][] positions;
    final double[] testedKm;
    final Workshop workshop;
    final List<Ledger> ledgers;
    private final Map<String, Integer> names = new HashMap<>();
    private final boolean[] known;
    private @Nullable RunRecords records;
    private Journal journal = Journal.NONE;
    private int today;

    /** A fleet on the day its first truck enters service, with nothing noted yet. */
    public FleetRun(World world) {
        this.world = world;
        trucks = world.trucks();
        positions = new Position[trucks.size()][];
        testedKm = new double[trucks.size()];
        known = new boolean[trucks.size()];
        for (int t = 0; t < positions.length; t++) {
            TruckWorld truck = trucks.get(t);
            positions[t] = new Position[truck.cylinders()];
            for (int c = 0; c < truck.cylinders(); c++) {
                positions[t][c] = new Position(truck, c);
            }
            testedKm[t] = truck.kmOn(truck.firstDay());
            names.put(truck.truck().truck(), t);
        }
        workshop = new Workshop(world);
        ledgers = freshLedgers(world);
        int first = trucks.stream().mapToInt(TruckWorld::firstDay).min().orElse(world.begin());
        today = first - Math.floorMod(first - world.begin(), 7);
    }

    private static List<Ledger> freshLedgers(World world) {
        return new ArrayList<>(
                world.scenario().families().stream().map(family -> new Ledger()).toList());
    }

    private FleetRun(FleetRun other, boolean withRecords) {
        world = other.world;
        trucks = other.trucks;
        positions = new Position[other.positions.length][];
        for (int t = 0; t < positions.length; t++) {
            positions[t] = Arrays.stream(other.positions[t]).map(Position::copy).toArray(Position[]::new);
        }
        testedKm = other.testedKm.clone();
        known = other.known.clone();
        names.putAll(other.names);
        workshop = other.workshop.copy();
        ledgers = new ArrayList<>(other.ledgers.stream().map(Ledger::copy).toList());
        RunRecords kept = other.records;
        records = withRecords && kept != null ? kept.copy() : null;
        today = other.today;
        journal = other.journal;
    }

    /** A copy that goes its own way; without records where its keeper reads none. */
    public FleetRun copy(boolean withRecords) {
        return new FleetRun(this, withRecords);
    }

    /** From now on tables are kept. */
    public void beginRecords(long seed) {
        records = RunRecords.begin(world, seed);
    }

    /** From now on work is told to a journal. */
    public void beginJournal(Journal given) {
        journal = given;
    }

    Journal journal() {
        return journal;
    }

    /** Whether the injector in a cylinder is still the one that was in at first. */
    public boolean isFirst(int truck, int cylinder) {
        return positions[truck][cylinder].n == 0;
    }

    /** The day the next week begins, a Monday. */
    public int today() {
        return today;
    }

    /** The day after the last one of the replay. */
    public int end() {
        return world.end();
    }

    /** What planning cost so far, by family in the scenario's order. */
    public List<Ledger> ledgers() {
        return ledgers;
    }

    /** All families together. */
    public Ledger total() {
        Ledger total = new Ledger();
        ledgers.forEach(total::add);
        return total;
    }

    /** Plays weeks until a day. */
    public void playUntil(int day, Keeper keeper) {
        while (today < day) {
            playWeek(keeper);
        }
    }

    /** Plays one week. */
    public void playWeek(Keeper keeper) {
        int monday = today;
        enter(monday);
        boolean counted = monday >= world.begin();
        new WeekPlay(this, keeper, monday, counted, records).play();
        if (counted) {
            for (TruckWorld truck : trucks) {
                int from = Math.max(monday, truck.firstDay());
                int to = Math.min(monday + 7, truck.soldDay());
                ledgers.get(truck.family()).km += to > from ? truck.kmOn(to) - truck.kmOn(from) : 0;
            }
        }
        today = monday + 7;
    }

    /** Trucks that have come into service get their first rows. */
    private void enter(int monday) {
        RunRecords kept = records;
        for (int t = 0; kept != null && t < positions.length; t++) {
            if (!known[t] && trucks.get(t).inServiceOn(monday)) {
                known[t] = true;
                for (Position position : positions[t]) {
                    kept.of(t).fitted(position);
                }
            }
        }
    }

    /** Whether its rows are kept: from the first Monday on which it is in service. */
    boolean noted(int truck) {
        return known[truck];
    }

    @Override
    public int trucks() {
        return trucks.size();
    }

    @Override
    public int family(int truck) {
        return trucks.get(truck).family();
    }

    @Override
    public int cylinders(int truck) {
        return positions[truck].length;
    }

    @Override
    public boolean inService(int truck, int day) {
        return trucks.get(truck).inServiceOn(day);
    }

    @Override
    public int leaves(int truck, int day) {
        TruckWorld each = trucks.get(truck);
        return day >= each.soldKnownDay() ? each.soldDay() : TruckWorld.NEVER;
    }

    @Override
    public double ageKm(int truck, int cylinder, int day) {
        return trucks.get(truck).kmOn(day) - positions[truck][cylinder].fittedKm;
    }

    @Override
    public int faultDays(int truck, int cylinder, int from, int to) {
        return positions[truck][cylinder].countFaultDays(trucks.get(truck), from, to);
    }

    @Override
    public int testsOver(int truck, int cylinder) {
        return positions[truck][cylinder].testsOver;
    }

    @Override
    public boolean bothOver(int truck, int cylinder) {
        return positions[truck][cylinder].bothOver;
    }

    @Override
    public double kmSinceTest(int truck, int day) {
        return trucks.get(truck).kmOn(day) - testedKm[truck];
    }

    @Override
    public FleetSnapshot snapshot(int day) {
        RunRecords kept = records;
        if (kept == null) {
            throw new IllegalStateException("this run keeps no records: its keeper said that it reads none");
        }
        return kept.snapshot(day, workshop.shelves());
    }

    @Override
    public String nameOf(int truck) {
        return trucks.get(truck).truck().truck();
    }

    @Override
    public int truckOf(String name) {
        return names.getOrDefault(name, NOT_YET);
    }

    @Override
    public int failDay(int truck, int cylinder) {
        return positions[truck][cylinder].failDay;
    }

    @Override
    public int lastDay(int truck) {
        return Math.min(world.end(), trucks.get(truck).soldDay());
    }

    Depot depotOf(int truck) {
        return workshop.depot(trucks.get(truck).truck().depot());
    }
}
