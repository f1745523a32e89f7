package dev.injectorplanner.app.plans;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.plan.Plan;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hibernate.StatelessSession;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;

/**
 * Plans that are kept. The newest of a depot, be it the depot's own or one of all depots, is in force. Earlier plans keep
 * their visits; their documents go after a while.
 */
public final class KeptPlans {
    /** Whole plans kept of a depot: this many newest ones, and the last of this many days. */
    private static final int DOCUMENTS = 7;

    private final Store store;
    private final PageAnswers<String, Optional<Long>> inForce;

    public KeptPlans(Store store) {
        this.store = store;
        this.inForce = new PageAnswers<>(store.dataSource());
    }

    /** Entities of this package's tables. */
    public static List<Class<?>> entities() {
        return List.of(PlanRunRow.class, PlannedVisitRow.class);
    }

    /** As below, noted under the name of the run. */
    public long keep(String runKey, @Nullable String depot, Instant at, Plan plan) {
        return keep(runKey, depot, at, plan, runKey);
    }

    /**
     * Keeps a plan; it is in force from then on.
     *
     * @param runKey names the run that made it: what is kept under a key is kept once, a second time changes nothing
     * @param depot the depot it plans, or null for all
     * @param by who let it be made, for the audit trail
     * @return the number of the kept plan
     */
    public long keep(String runKey, @Nullable String depot, Instant at, Plan plan, String by) {
        try {
            return keepOnce(runKey, depot, at, plan, by);
        } catch (ConstraintViolationException e) { // kept under the same key this very moment
            return store.inTransaction(session -> findByKey(session, runKey)).orElseThrow(() -> e);
        }
    }

    private static Optional<Long> findByKey(StatelessSession session, String runKey) {
        return session
                .createSelectionQuery("select r.id from PlanRunRow r where r.runKey = :key", Long.class)
                .setParameter("key", runKey)
                .getResultList()
                .stream()
                .findFirst();
    }

    private long keepOnce(String runKey, @Nullable String depot, Instant at, Plan plan, String by) {
        return store.inTransaction(session -> findByKey(session, runKey).orElseGet(() -> {
            PlanRunRow row = PlanRunRow.of(nextId(session), runKey, depot, at, plan);
            String before = newestIds(session, depot == null ? PlanRunRow.ALL_DEPOTS : depot, 1).stream()
                    .map(id -> "plan " + id)
                    .findFirst()
                    .orElse("");
            long id = insert(session, row, plan);
            session.doWork(connection -> AuditTrail.write(
                    connection,
                    Instant.now(), // when it was done, which may be later than when it was due
                    by,
                    "make a plan",
                    depot == null ? "all depots" : depot,
                    before,
                    words(id, plan)));
            return id;
        }));
    }

    private static String words(long id, Plan plan) {
        return "plan " + id + " of " + plan.today() + ": " + plan.visits().size() + " visits, "
                + plan.dueItems().size() + " due items";
    }

    /** Drawn one by one: a node with a stock of numbers would keep a later plan under a lower one. */
    private static long nextId(StatelessSession session) {
        return session.doReturningWork(connection -> StoreSql.nextIds(connection, "plan_run_seq"));
    }

    private static long insert(StatelessSession session, PlanRunRow run, Plan plan) {
        session.insert(run);
        List<PlannedVisitRow> visits = plan.visits().stream()
                .map(visit -> PlannedVisitRow.of(run.id(), plan, visit))
                .toList();
        if (!visits.isEmpty()) {
            session.insertMultiple(visits);
        }
        letGoOfOldDocuments(session, run);
        return run.id();
    }

    private static void letGoOfOldDocuments(StatelessSession session, PlanRunRow run) {
        List<Long> newest = session.createSelectionQuery(
                        "select r.id from PlanRunRow r where r.depotKey ="
                                + " (select s.depotKey from PlanRunRow s where s.id = :run) order by r.id desc",
                        Long.class)
                .setParameter("run", run.id())
                .setMaxResults(DOCUMENTS)
                .getResultList();
        List<Long> lastOfDays = session.createSelectionQuery(
                        "select max(r.id) from PlanRunRow r where r.document is not null and r.depotKey ="
                                + " (select s.depotKey from PlanRunRow s where s.id = :run)"
                                + " group by r.madeFor order by r.madeFor desc",
                        Long.class)
                .setParameter("run", run.id())
                .setMaxResults(DOCUMENTS)
                .getResultList();
        Set<Long> kept = new TreeSet<>(newest);
        kept.addAll(lastOfDays);
        session.createMutationQuery("update PlanRunRow r set r.document = null where r.document is not null"
                        + " and r.depotKey = (select s.depotKey from PlanRunRow s where s.id = :run)"
                        + " and r.id not in (:kept)")
                .setParameter("run", run.id())
                .setParameterList("kept", kept)
                .executeUpdate();
    }

    /** The plan in force at a depot: the newest one of it or of all depots. */
    public Optional<KeptPlan> findInForce(String depot) {
        return store.inTransaction(session -> newestIds(session, depot, 1).stream()
                .findFirst()
                .flatMap(id -> session.get(PlanRunRow.class, id).findKept()));
    }

    /**
     * Plans made for days before one, the latest first, the last of each day.
     *
     * @param depot plans of that depot or of all, or null for those of all alone
     * @param most the most days asked for; a week of them is kept whole
     */
    public List<Plan> listEarlier(@Nullable String depot, LocalDate day, int most) {
        List<String> keys = depot == null ? List.of(PlanRunRow.ALL_DEPOTS) : List.of(depot, PlanRunRow.ALL_DEPOTS);
        return store.inTransaction(session -> {
            List<Long> lastOfDays = session.createSelectionQuery(
                            "select max(r.id) from PlanRunRow r where r.depotKey in (:keys) and r.madeFor < :day"
                                    + " and r.document is not null group by r.madeFor order by r.madeFor desc",
                            Long.class)
                    .setParameterList("keys", keys)
                    .setParameter("day", day)
                    .setMaxResults(most)
                    .getResultList();
            List<Plan> found = new ArrayList<>();
            for (Long id : lastOfDays) {
                PlanRunRow row = session.get(PlanRunRow.class, id);
                row.findKept().ifPresent(kept -> found.add(kept.plan()));
            }
            return found;
        });
    }

    /** The number of the plan in force at a depot: cheap to ask. */
    public Optional<Long> findInForceId(String depot) {
        return inForce.of(
                depot,
                key -> store.inTransaction(
                        session -> newestIds(session, key, 1).stream().findFirst()));
    }

    /** A kept plan whose document is still there. */
    public Optional<KeptPlan> find(long id) {
        return store.inTransaction(session -> session
                .createSelectionQuery("from PlanRunRow r where r.id = :id and r.document is not null", PlanRunRow.class)
                .setParameter("id", id)
                .getResultList()
                .stream()
                .findFirst()
                .flatMap(PlanRunRow::findKept));
    }

    /** A depot's plans that were kept before a moment, the newest last: their visits at that depot. */
    public Optional<List<KeptVisit>> findVisitsBefore(String depot, Instant moment) {
        return store.inTransaction(session -> session
                .createSelectionQuery(
                        "select r.id from PlanRunRow r where r.depotKey in (:keys) and r.keptAt < :moment"
                                + " order by r.id desc",
                        Long.class)
                .setParameterList("keys", List.of(depot, PlanRunRow.ALL_DEPOTS))
                .setParameter("moment", moment)
                .setMaxResults(1)
                .getResultList()
                .stream()
                .findFirst()
                .map(id -> visits(session, id, depot)));
    }

    /** Visits of the plan in force at a depot, by week and truck; none where no plan was kept. */
    public List<KeptVisit> listVisits(String depot) {
        return store.inTransaction(session -> newestIds(session, depot, 1).stream()
                .findFirst()
                .map(id -> visits(session, id, depot))
                .orElse(List.of()));
    }

    private static List<Long> newestIds(StatelessSession session, String depot, int most) {
        return session.createSelectionQuery(
                        "select r.id from PlanRunRow r where r.depotKey in (:keys) order by r.id desc", Long.class)
                .setParameterList("keys", List.of(depot, PlanRunRow.ALL_DEPOTS))
                .setMaxResults(most)
                .getResultList();
    }

    private static List<KeptVisit> visits(StatelessSession session, long run, String depot) {
        return session
                .createSelectionQuery(
                        "from PlannedVisitRow v where v.planRun = :run and v.depot = :depot order by v.week, v.truck",
                        PlannedVisitRow.class)
                .setParameter("run", run)
                .setParameter("depot", depot)
                .getResultList()
                .stream()
                .map(PlannedVisitRow::kept)
                .toList();
    }
}
