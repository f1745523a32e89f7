package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.bayjob.BayJob;
import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.entry.KnownFleet;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.plans.KeptVisit;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Truck;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;

/** Kits: injectors in stock allocated to the cylinders of a planned visit, one for each. */
public final class Kits {
    private final Store store;
    private final KeptPlans plans;
    private final BayJobs jobs;

    public Kits(Store store, KeptPlans plans) {
        this.store = store;
        this.plans = plans;
        this.jobs = new BayJobs(store);
    }

    /**
     * Allocates an injector to a cylinder of a planned visit.
     *
     * @throws RefusedEntryException where it is allocated to another, does not fit, or the cylinder has one or no visit
     */
    public void bind(String depot, long injector, String truck, int cylinder, Instant at, String by) {
        List<Integer> planned = wanted(depot, truck);
        store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            StockInjector there = SerialisedStock.there(connection, depot, injector);
            String what = "serial \"" + there.serial() + "\": ";
            if (there.truck() != null) {
                throw refused(what + "is allocated to " + there.place().orElseThrow(), "release it there first");
            }
            if (!planned.contains(cylinder)) {
                throw refused(
                        "truck " + truck + ", cylinder " + cylinder + ": is not in any planned visit of " + depot,
                        planned.isEmpty() ? "choose a truck in the plan" : "choose one of cylinders " + planned);
            }
            for (StockInjector other : StockInjectorRows.boundTo(connection, truck)) {
                if (other.isFor(truck, cylinder)) {
                    throw refused(
                            "truck " + truck + ", cylinder " + cylinder + ": has serial " + other.serial()
                                    + " in its kit already",
                            "release that one first");
                }
            }
            EngineFamily family = family(writer, truck);
            if (!there.part().equals(family.injectorPart())) {
                throw refused(
                        what + "is a " + there.part() + ", but engines of family " + family.family() + " take "
                                + family.injectorPart(),
                        "choose an injector of that part");
            }
            StockInjectorRows.bind(connection, injector, truck, cylinder, at, by);
            StockNotes.bound(connection, at, by, truck, List.of(StockNotes.bound(cylinder, there)));
            return there;
        });
    }

    /**
     * Allocates a visit's kit: each planned cylinder without an injector gets the one in stock longest.
     *
     * @throws RefusedEntryException where the depot's plan has no visit of that truck
     * @return how many cylinders still lack one
     */
    public int fill(String depot, String truck, Instant at, String by) {
        List<Integer> planned = wanted(depot, truck);
        if (planned.isEmpty()) {
            throw refused("truck " + truck + ": is not in any planned visit of " + depot, "choose a truck in the plan");
        }
        return store.inJointTransaction(
                (connection, writer) -> fill(connection, writer, depot, truck, planned, at, by));
    }

    /** The same for a job that is just started, within its transaction; what it lacks stays open. */
    public static void fill(Connection connection, StoreWriter writer, BayJob job) throws SQLException {
        fill(connection, writer, job.depot(), job.truck(), job.cylinders(), job.startedAt(), job.startedBy());
    }

    private static int fill(
            Connection connection,
            StoreWriter writer,
            String depot,
            String truck,
            List<Integer> planned,
            Instant at,
            String by)
            throws SQLException {
        StockInjectorRows.takeTurn(connection);
        EngineFamily family = family(writer, truck);
        Set<Integer> have = new HashSet<>();
        StockInjectorRows.boundTo(connection, truck).forEach(row -> have.add(row.cylinder()));
        Iterator<StockInjector> free = free(connection, depot, family.injectorPart());
        List<String> bound = new ArrayList<>();
        int lacking = 0;
        for (int cylinder : planned) {
            if (!have.contains(cylinder)) {
                if (free.hasNext()) {
                    StockInjector next = free.next();
                    StockInjectorRows.bind(connection, next.id(), truck, cylinder, at, by);
                    bound.add(StockNotes.bound(cylinder, next));
                } else {
                    lacking++;
                }
            }
        }
        if (!bound.isEmpty()) {
            StockNotes.bound(connection, at, by, truck, bound);
        }
        return lacking;
    }

    private static Iterator<StockInjector> free(Connection connection, String depot, String part) throws SQLException {
        return StockInjectorRows.ofDepot(connection, depot).stream()
                .filter(row -> row.truck() == null && row.part().equals(part))
                .iterator();
    }

    /** Releases an injector: it is free for any cylinder again. */
    public void release(String depot, long injector, Instant at, String by) {
        store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            StockInjector there = SerialisedStock.there(connection, depot, injector);
            StockInjectorRows.release(connection, there.id());
            StockNotes.released(connection, at, by, there);
            return there;
        });
    }

    /**
     * A cylinder of a kit as a person saw it.
     *
     * @param serial of the injector that was shown for it
     */
    public record Seen(int cylinder, String serial) {}

    /**
     * Two injectors of a truck's kit lie in each other's cylinder: each is allocated to where it is. Sent a second time, it
     * changes nothing.
     *
     * @throws RefusedEntryException where one of the cylinders has none in the kit, or the kit is not as it was seen
     */
    public void changeOver(String depot, String truck, Seen seen, Seen seenToo, Instant at, String by) {
        store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            int first = seen.cylinder();
            int second = seenToo.cylinder();
            StockInjector one = inKit(connection, depot, truck, first);
            StockInjector other = inKit(connection, depot, truck, second);
            if (one.serial().equals(seenToo.serial()) && other.serial().equals(seen.serial())) {
                return false;
            }
            if (!one.serial().equals(seen.serial()) || !other.serial().equals(seenToo.serial())) {
                throw RefusedEntryException.of(
                        "c" + first + ".serial",
                        "Cylinder " + first + ": the kit was changed since this page was opened",
                        "compare both cylinders with the kit as it is now, and swap them again if they still differ");
            }
            StockInjectorRows.release(connection, one.id());
            StockInjectorRows.release(connection, other.id());
            StockInjectorRows.bind(connection, one.id(), truck, second, at, by);
            StockInjectorRows.bind(connection, other.id(), truck, first, at, by);
            StockNotes.bound(
                    connection, at, by, truck, List.of(StockNotes.bound(second, one), StockNotes.bound(first, other)));
            return true;
        });
    }

    private static StockInjector inKit(Connection connection, String depot, String truck, int cylinder)
            throws SQLException {
        return StockInjectorRows.boundTo(connection, truck).stream()
                .filter(row -> row.isFor(truck, cylinder) && row.depot().equals(depot))
                .findFirst()
                .orElseThrow(() -> refused(
                        "truck " + truck + ", cylinder " + cylinder + ": has no injector in its kit",
                        "allocate one on the page of kits first"));
    }

    /** Cylinders of the job that is open at a truck, else of its planned visit. */
    private List<Integer> wanted(String depot, String truck) {
        return jobs.findOpen(truck).map(BayJob::cylinders).orElseGet(() -> planned(depot, truck));
    }

    private List<Integer> planned(String depot, String truck) {
        return KeptVisit.mainOnes(plans.listVisits(depot)).stream()
                .filter(visit -> visit.truck().equals(truck))
                .findFirst()
                .map(KeptVisit::cylinders)
                .orElse(List.of());
    }

    private static EngineFamily family(StoreWriter writer, String truck) {
        KnownFleet known = new KnownFleet(writer);
        Truck there = known.truck(truck);
        return known.familyOf(there);
    }

    private static RefusedEntryException refused(String what, String fix) {
        return RefusedEntryException.of("kit", what, fix);
    }
}
