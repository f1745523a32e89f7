package dev.injectorplanner.app.bayjob;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.KnownFleet;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Truck;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Jobs begun at the truck: one a truck at a time, until it is closed out or called off. */
public final class BayJobs {
    private static final int LONGEST_KEY = 100;
    private static final int LONGEST_WHY = 500;

    private final Store store;

    public BayJobs(Store store) {
        this.store = store;
    }

    /** The open job of a truck. */
    public Optional<BayJob> findOpen(String truck) {
        return store.inJointTransaction((connection, writer) -> BayJobRows.open(connection, truck));
    }

    /** The job that a close-out ended. */
    public Optional<BayJob> findClosedBy(long closeOut) {
        return store.inJointTransaction((connection, writer) -> BayJobRows.ofCloseOut(connection, closeOut));
    }

    /** Open jobs of a depot, the longest first. */
    public List<BayJob> listOpen(String depot) {
        return store.inJointTransaction((connection, writer) -> BayJobRows.openOf(connection, depot));
    }

    /**
     * What a mechanic starts.
     *
     * @param formKey names the form: sent twice, it starts one job
     * @param failed cylinders that failed, at least one
     * @param cylinders all that are to be done
     */
    public record Start(
            String formKey, String truck, Collection<Integer> failed, Collection<Integer> cylinders, String why) {}

    /** What is done together with the start of a job: all of it is kept, or nothing. */
    public interface Along {
        void started(Connection connection, StoreWriter writer, BayJob job) throws SQLException;
    }

    /**
     * Starts a job.
     *
     * @throws RefusedEntryException where a cylinder is not the engine's, or the truck has an open job of another form
     */
    public BayJob start(Start start, Instant at, String by) {
        return start(start, at, by, (connection, writer, job) -> {});
    }

    /**
     * Starts a job with what belongs to it.
     *
     * @throws RefusedEntryException where a cylinder is not the engine's, the truck has an open job of another form, or the
     *     form's job is over
     */
    public BayJob start(Start start, Instant at, String by, Along along) {
        return store.inJointTransaction((connection, writer) -> {
            StoreSql.update(connection, "update workshop_gate set turn = turn + 1 where id = 1");
            Optional<BayJob> sent = BayJobRows.byKey(connection, start.formKey());
            if (sent.isPresent()) {
                return stillOpen(connection, sent.get());
            }
            BayJob job = started(connection, writer, start, at, by);
            along.started(connection, writer, job);
            return job;
        });
    }

    /** A form that is sent again starts nothing; where its job is over, it says so. */
    private static BayJob stillOpen(Connection connection, BayJob job) throws SQLException {
        if (BayJobRows.isEnded(connection, job.truck(), job.id())) {
            throw RefusedEntryException.of(
                    "truck",
                    "truck " + job.truck() + ": the job of this form is over already",
                    "open the page again to start another");
        }
        return job;
    }

    private static BayJob started(Connection connection, StoreWriter writer, Start start, Instant at, String by)
            throws SQLException {
        KnownFleet known = new KnownFleet(writer);
        Truck truck = known.truck(start.truck());
        check(start, known.familyOf(truck));
        Optional<BayJob> open = BayJobRows.open(connection, start.truck());
        if (open.isPresent()) {
            throw RefusedEntryException.of(
                    "truck",
                    "truck " + start.truck() + ": " + open.get().startedBy()
                            + " already started a job on cylinders "
                            + BayJobRows.words(open.get().cylinders()),
                    "open its bay sheet; close that job out or cancel it there first");
        }
        TreeSet<Integer> all = new TreeSet<>(start.cylinders());
        all.addAll(start.failed());
        BayJob job = new BayJob(
                StoreSql.nextIds(connection, "bay_job_seq"),
                truck.truck(),
                truck.depot(),
                new TreeSet<>(start.failed()).stream().toList(),
                all.stream().toList(),
                at,
                by,
                start.why().strip());
        BayJobRows.insert(connection, job, start.formKey());
        AuditTrail.write(connection, at, by, "start a job", job.truck(), "", words(job));
        return job;
    }

    private static void check(Start start, EngineFamily family) {
        EntryProblems problems = new EntryProblems();
        if (start.formKey().isBlank() || start.formKey().length() > LONGEST_KEY) {
            problems.add("formKey", "the form's key is missing or damaged", "open the page again");
        }
        if (start.failed().isEmpty()) {
            problems.add("failed", "failed cylinders: none is chosen", "press each cylinder that failed");
        }
        TreeSet<Integer> all = new TreeSet<>(start.cylinders());
        all.addAll(start.failed());
        all.removeAll(family.allCylinders());
        all.forEach(cylinder -> problems.add(
                "failed",
                "cylinder " + cylinder + ": family " + family.family() + " has cylinders 1 to " + family.cylinders(),
                "choose one of them"));
        if (start.why().length() > LONGEST_WHY) {
            problems.add("why", "what was seen: is too long", "keep it to " + LONGEST_WHY + " characters");
        }
        problems.guarded("why", () -> Require.text("what was seen", start.why()));
        problems.throwIfAny();
    }

    /**
     * Calls an open job off: it was started by mistake, or the truck went elsewhere. One that is over already stays as it is.
     *
     * @throws RefusedEntryException where that job is none of the truck's
     */
    public void callOff(String truck, long id, Instant at, String by) {
        store.inJointTransaction((connection, writer) -> {
            if (BayJobRows.isEnded(connection, truck, id)) {
                return false;
            }
            BayJob job = BayJobRows.open(connection, truck)
                    .filter(open -> open.id() == id)
                    .orElseThrow(() -> RefusedEntryException.of(
                            "truck", "truck " + truck + ": that job is not open", "look at its bay sheet again"));
            BayJobRows.end(connection, job.id(), at, by);
            AuditTrail.write(connection, at, by, "call a job off", truck, words(job), "");
            return true;
        });
    }

    private static String words(BayJob job) {
        return "cylinders " + BayJobRows.words(job.cylinders()) + ", failed " + BayJobRows.words(job.failed());
    }
}
