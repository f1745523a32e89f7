package dev.injectorplanner.app.planning;

import dev.injectorplanner.app.forecast.ForecastBook;
import dev.injectorplanner.app.holds.HoldBook;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.UserError;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.PlanChange;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.PreparedFleet;
import dev.injectorplanner.core.plan.RulePrice;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.schedule.ExtraCapacity;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes plans from what is stored. */
public final class Planning {
    private final Store store;
    private final Planner planner;
    private final HoldBook holds;
    private final KeptPlans plans;
    private final FleetLearning learning;
    private final PreparedFleets prepared;
    private final SparePieces spares;
    private final SiteSettings settings;
    private final ForecastBook forecasts;
    private final Previews previews;

    public Planning(Store store, Planner planner, HoldBook holds, KeptPlans plans) {
        this.store = store;
        this.planner = planner;
        this.holds = holds;
        this.plans = plans;
        this.learning = new FleetLearning(store, planner, plans);
        this.prepared = new PreparedFleets(store);
        this.spares = new SparePieces(store, plans);
        this.settings = new SiteSettings(store.dataSource());
        this.forecasts = new ForecastBook(store.dataSource());
        this.previews = new Previews(store.dataSource(), InstantSource.system());
    }

    /** How plans of this site are made: the planner's defaults with what the site has set. */
    public Policy policy() {
        return settings.policy();
    }

    /**
     * A plan and the fleet it was made for.
     *
     * @param turn of the site's settings when it was begun
     */
    public record Planned(FleetSnapshot fleet, Plan plan, long turn) {
        /** One that is in force, or is not to be kept. */
        public Planned(FleetSnapshot fleet, Plan plan) {
            this(fleet, plan, Long.MAX_VALUE);
        }
    }

    /**
     * A plan that was tried out.
     *
     * @param planned the plan with what was tried
     * @param change what that changes against the plan without it
     */
    public record Tried(Planned planned, PlanChange change) {}

    /**
     * Plans one depot, or all, within what the manager holds and what is tried on top of it.
     *
     * @param depot the depot, or null for all
     * @param tried pins and blocked weeks to try; they go before stored ones of the same truck
     * @throws NothingToPlanException where there is no such depot, naming those there are, or no truck
     */
    public Planned plan(LocalDate today, Policy policy, @Nullable String depot, Holds tried) {
        long turn = settings.turn();
        PreparedFleets.Kept kept = kept(today, policy, depot);
        check(kept.fleet, policy, today, tried);
        PreparedFleet.Trial trial = tried.equals(Holds.none())
                ? base(kept, today, depot)
                : planner.tryOut(kept.prepared, all(today, depot, tried), List.of());
        return new Planned(kept.fleet, planner.tell(trial), turn);
    }

    /**
     * The same, with hours and bays to try as well, and what all of it changes. The fleet is read, learned and priced once.
     *
     * @throws InvalidValueException where a truck, depot or week is not known
     */
    public Tried tryOut(
            LocalDate today, Policy policy, @Nullable String depot, Holds tried, List<ExtraCapacity> extra) {
        PreparedFleets.Kept kept = kept(today, policy, depot);
        check(kept.fleet, policy, today, tried);
        previews.begun();
        PreparedFleet.Trial before = base(kept, today, depot);
        PreparedFleet.Trial after = planner.tryOut(kept.prepared, all(today, depot, tried), extra, before);
        return new Tried(new Planned(kept.fleet, planner.tell(after)), kept.prepared.change(before, after));
    }

    /** Whether somebody tried a change out a short while ago, on whichever node. */
    public boolean previewedWithin(Duration time) {
        return previews.within(time);
    }

    /** Depots and their zones. */
    public Map<String, ZoneId> zones() {
        return new StoreSql(store.dataSource())
                        .list(
                                "select depot, time_zone from depot order by depot",
                                row -> Map.entry(row.getString(1), ZoneId.of(row.getString(2))))
                        .stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, TreeMap::new));
    }

    private PreparedFleets.Kept kept(LocalDate today, Policy policy, @Nullable String depot) {
        return prepared.get(
                depot,
                today,
                policy,
                () -> depot == null ? fleet(null) : spares.offer(fleet(depot), depot),
                fleet -> learning.prepare(fleet, policy, today, depot));
    }

    /** The schedule within what is held, with nothing tried. */
    private PreparedFleet.Trial base(PreparedFleets.Kept kept, LocalDate today, @Nullable String depot) {
        return kept.base(all(today, depot, Holds.none()), held -> planner.tryOut(kept.prepared, held, List.of()));
    }

    /**
     * What each of the site's own rules costs; see {@link Planner#priceRules}.
     *
     * @throws NothingToPlanException as {@link #plan}
     */
    public List<RulePrice> priceRules(LocalDate today, Policy policy, @Nullable String depot, ReplayWatch watch) {
        FleetSnapshot fleet = fleet(depot);
        int rules = fleet.rules().size();
        return planner.priceRules(
                fleet,
                policy,
                today,
                all(today, depot, Holds.none()),
                done -> watch.progress("rules priced", done, rules),
                watch::stopped);
    }

    private Holds all(LocalDate today, @Nullable String depot, Holds tried) {
        return CombinedHolds.of(holds.holds(depot, IsoWeek.of(today)), tried);
    }

    /** As below, noted under the name of the run. */
    public Planned planAndKeep(String runKey, Instant at, LocalDate today, Policy policy, @Nullable String depot) {
        return planAndKeep(runKey, at, today, policy, depot, runKey);
    }

    /**
     * Plans within what the manager holds, and keeps the plan: it is in force from then on.
     *
     * @param runKey names the run; a plan is kept once under it
     * @param by who lets it be made, for the audit trail
     */
    public Planned planAndKeep(
            String runKey, Instant at, LocalDate today, Policy policy, @Nullable String depot, String by) {
        Planned planned = plan(today, policy, depot);
        keep(runKey, at, planned, depot, by);
        return planned;
    }

    /**
     * Keeps a plan that was made: it is in force from then on. It is said to be older than what was changed meanwhile.
     *
     * @return the number of the kept plan
     */
    public long keep(String runKey, Instant at, Planned planned, @Nullable String depot, String by) {
        long number = plans.keep(runKey, depot, at, planned.plan(), by);
        settings.planKept(number, planned.turn());
        forecasts.keep(planned.fleet(), planned.plan());
        return number;
    }

    private static void check(FleetSnapshot fleet, Policy policy, LocalDate today, Holds holds) {
        Set<String> known = fleet.trucks().stream().map(Truck::truck).collect(Collectors.toSet());
        Stream.of(holds.pins(), holds.blocked(), holds.days())
                .flatMap(each -> each.keySet().stream())
                .filter(truck -> !known.contains(truck))
                .findFirst()
                .ifPresent(truck -> {
                    throw new InvalidValueException("truck", truck, "is not known", "check its name and depot");
                });
        holds.pins().forEach((truck, week) -> {
            int ahead = IsoWeek.of(today).weeksUntil(week);
            if (ahead < 0 || ahead >= policy.weeks()) {
                throw new InvalidValueException(
                        "week",
                        week,
                        "is outside the plan, " + IsoWeek.of(today) + " to "
                                + IsoWeek.of(today).plus(policy.weeks() - 1),
                        "pin truck " + truck + " to a week of the plan, or plan more weeks");
            }
        });
    }

    /** The same with nothing tried. */
    public Planned plan(LocalDate today, Policy policy, @Nullable String depot) {
        return plan(today, policy, depot, Holds.none());
    }

    /** The fleet of one depot, or of all. */
    public FleetSnapshot fleet(@Nullable String depot) {
        FleetSnapshot fleet =
                depot == null ? store.snapshot() : store.findSnapshot(depot).orElseThrow(() -> unknown(depot));
        if (fleet.trucks().isEmpty()) {
            throw new NothingToPlanException((depot == null ? "The store" : "Depot " + depot)
                    + " has no trucks yet. Fix: load files first, or try the demo.");
        }
        return fleet;
    }

    private NothingToPlanException unknown(String depot) {
        String known = store.snapshot().depots().stream().map(Depot::depot).collect(Collectors.joining(", "));
        return new NothingToPlanException("--depot " + depot + ": no such depot. Fix: "
                + (known.isEmpty() ? "load the depots first." : "choose one of " + known + "."));
    }

    /** There is no such depot, or no truck in it. */
    public static final class NothingToPlanException extends RuntimeException implements UserError {
        private static final long serialVersionUID = 1L;

        NothingToPlanException(String message) {
            super(message);
        }
    }
}
