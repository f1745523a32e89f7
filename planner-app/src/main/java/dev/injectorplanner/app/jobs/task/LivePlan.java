package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.jobs.task.LiveChanges.Change;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.plans.KeptPlans;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Replans after close-outs and loads, once they have been quiet for as long as the site says: several changes are one plan. It
 * waits while a manager previews a change, since a new plan would answer another question than was asked.
 */
public final class LivePlan implements JobTask {
    /** How long after a preview nobody is thought to look at it any more. Planner default. */
    static final Duration PREVIEWED = Duration.ofMinutes(5);

    /** Begins what the audit trail has for the maker of such a plan; what it was made after follows. */
    public static final String AFTER = "replan after ";

    private static final String ALL = "";

    private final Planning planning;
    private final KeptPlans plans;
    private final PlanKeeper keeper;
    private final LiveChanges changes;
    private final Supplier<Optional<Duration>> quiet;

    /** @param quiet how long there must have been no change; empty: nothing is replanned by itself */
    public LivePlan(
            Planning planning,
            KeptPlans plans,
            PlanKeeper keeper,
            LiveChanges changes,
            Supplier<Optional<Duration>> quiet) {
        this.planning = planning;
        this.plans = plans;
        this.keeper = keeper;
        this.changes = changes;
        this.quiet = quiet;
    }

    @Override
    public boolean isWorthwhile(RunKey key) {
        Optional<Duration> wait = quiet.get();
        if (wait.isEmpty()) {
            return false;
        }
        Optional<Long> mark = changes.mark();
        if (mark.isEmpty()) {
            return true; // the first run only notes how far the changes reach
        }
        List<Change> all = changes.since(mark.get());
        if (all.isEmpty()) {
            return false;
        }
        Instant newest = all.get(all.size() - 1).at();
        return !newest.plus(wait.get()).isAfter(key.due())
                && !planning.previewedWithin(PREVIEWED)
                && !changes.isTried(newest);
    }

    @Override
    public TaskResult run(JobContext context) {
        long newest = changes.newest();
        List<Change> all = changes.mark().map(changes::since).orElse(List.of()).stream()
                .filter(change -> change.id() <= newest)
                .toList();
        Map<String, ZoneId> scopes = all.isEmpty() ? Map.of() : scopes(all, planning.zones());
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("changes", (long) all.size());
        counts.put("plans", (long) scopes.size());
        int at = 0;
        for (Map.Entry<String, ZoneId> scope : scopes.entrySet()) {
            @Nullable String depot = scope.getKey().equals(ALL) ? null : scope.getKey();
            at++;
            context.progress()
                    .accept((depot == null ? "all depots" : depot) + ", plan " + at + " of " + scopes.size()
                            + ", after " + words(all));
            Instant due = context.key().due();
            Planned planned = planning.plan(LocalDate.ofInstant(due, scope.getValue()), planning.policy(), depot);
            keeper.keep(
                    context.key().text() + "/" + (depot == null ? "all" : depot),
                    depot,
                    due,
                    planned,
                    AFTER + words(all));
        }
        return new TaskResult(counts, LiveChanges.seen(newest));
    }

    /** The first change, and how many more. */
    private static String words(List<Change> all) {
        return all.get(0).words() + (all.size() == 1 ? "" : " and " + (all.size() - 1) + " more");
    }

    /** What the plans in force of the depots concerned plan: a depot, or all of them; each with the zone of its day. */
    private Map<String, ZoneId> scopes(List<Change> all, Map<String, ZoneId> zones) {
        Map<String, ZoneId> scopes = new LinkedHashMap<>();
        for (String depot : depots(all, zones.keySet())) {
            ZoneId zone = zones.get(depot);
            KeptPlan inForce = plans.findInForce(depot).orElse(null);
            if (zone != null && inForce != null && isOfItsDay(inForce, zone)) {
                scopes.putIfAbsent(inForce.depot() == null ? ALL : depot, zone);
            }
        }
        return scopes;
    }

    private Set<String> depots(List<Change> all, Set<String> known) {
        Set<String> depots = new TreeSet<>();
        for (Change change : all) {
            Optional<String> depot = change.truck().flatMap(changes::depotOf);
            if (depot.isEmpty()) {
                return new TreeSet<>(known);
            }
            depots.add(depot.get());
        }
        return depots;
    }

    /** A plan that was made for another day than it was kept on, such as the demo's, is left as it is. */
    private static boolean isOfItsDay(KeptPlan kept, ZoneId zone) {
        return LocalDate.ofInstant(kept.keptAt(), zone).equals(kept.plan().today());
    }
}
