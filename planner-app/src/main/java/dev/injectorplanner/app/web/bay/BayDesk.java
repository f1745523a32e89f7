package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.bayjob.BayJob;
import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.bayjob.JobOffers;
import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.bay.TruckInBay.Finished;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.PlansInForce;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.bay.BaySheet;
import dev.injectorplanner.reports.bay.BaySheetMaker;
import dev.injectorplanner.reports.bay.CodedInjector;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** Brings together what a mechanic or storeman looks at: the fleet, the plan in force, kits, what is done. */
class BayDesk {
    private final Store store;
    private final Fleets fleets;
    private final PlansInForce plans;
    private final SiteClock clock;
    private final CloseOuts closeOuts;
    private final SerialisedStock shelf;
    private final SiteSettings settings;
    private final BayJobs jobs;
    private final Supplier<Policy> policy;

    BayDesk(
            Store store,
            Fleets fleets,
            PlansInForce plans,
            SiteClock clock,
            CloseOuts closeOuts,
            SerialisedStock shelf,
            BayJobs jobs,
            Supplier<Policy> policy) {
        this.jobs = jobs;
        this.policy = policy;
        this.store = store;
        this.fleets = fleets;
        this.plans = plans;
        this.clock = clock;
        this.closeOuts = closeOuts;
        this.shelf = shelf;
        this.settings = new SiteSettings(store.dataSource());
    }

    /** The visit that a truck's sheet is for: its diagnosis, else what this week has, else its main visit. */
    private static @Nullable Visit atHand(Plan plan, Truck truck) {
        IsoWeek now = IsoWeek.of(plan.today());
        List<Visit> visits = plan.visits().stream()
                .filter(each ->
                        each.truck().equals(truck.truck()) && each.depot().equals(truck.depot()))
                .toList();
        return visits.stream()
                .filter(each -> each.diagnosis() || each.week().equals(now))
                .findFirst()
                .or(() -> visits.stream().filter(plan::isMain).findFirst())
                .or(() -> visits.stream().findFirst())
                .orElse(null);
    }

    /** Depots that a person may see, by name. */
    List<Depot> depots(Viewer viewer) {
        return store.<List<Depot>>inJointTransaction((connection, writer) -> writer.all(Depot.class)).stream()
                .filter(depot -> viewer.sees(depot.depot()))
                .sorted(Comparator.comparing(Depot::depot))
                .toList();
    }

    /** The depot a person asked for, or the first that he sees; empty where there is none. */
    Optional<Depot> chosen(Viewer viewer, String asked) {
        List<Depot> depots = depots(viewer);
        Optional<Depot> named =
                depots.stream().filter(depot -> depot.depot().equals(asked)).findFirst();
        if (named.isEmpty() && !asked.isEmpty()) {
            throw notThere();
        }
        return named.or(() -> depots.stream().findFirst());
    }

    Optional<FleetIndex> findFleet(String depot) {
        return fleets.find(depot);
    }

    Optional<KeptPlan> findPlan(String depot) {
        return plans.find(depot);
    }

    /** Visits of a plan that are done, by truck. */
    Map<String, CloseOut> done(String depot, KeptPlan plan) {
        return closeOuts.since(depot, plan.keptAt());
    }

    /** The later of a depot's own day and that of the plan. */
    LocalDate today(Depot depot, @Nullable KeptPlan plan) {
        LocalDate own = clock.today(depot.timeZone());
        return plan != null && plan.plan().today().isAfter(own) ? plan.plan().today() : own;
    }

    /**
     * A truck with its sheet.
     *
     * @throws ResponseStatusException not found, where there is no such truck or it is none of the person's depot
     */
    TruckInBay truck(Viewer viewer, String name) {
        Truck truck = store
                .<List<Truck>>inJointTransaction((connection, writer) -> writer.ofTrucks(Truck.class, List.of(name)))
                .stream()
                .filter(row -> viewer.sees(row.depot()))
                .findFirst()
                .orElseThrow(BayDesk::notThere);
        FleetIndex fleet = fleets.find(truck.depot()).orElseThrow(BayDesk::notThere);
        SiteUnits units = settings.units();
        KeptPlan plan = plans.find(truck.depot(), units).orElse(null);
        Depot depot = fleet.depot(truck.depot());
        Map<Integer, StockInjector> kit = shelf.kitOf(name);
        LocalDate today = today(depot, plan);
        BayJob job = jobs.findOpen(name).orElse(null);
        Visit planned = plan == null ? null : atHand(plan.plan(), truck);
        Visit visit = job == null ? planned : JobOffers.visit(fleet, truck, job.cylinders(), today);
        return new TruckInBay(
                truck,
                depot,
                fleet.family(truck.family()),
                fleet,
                plan == null ? null : plan.plan().today(),
                today,
                visit,
                job != null
                        ? jobSheet(fleet, plan, Objects.requireNonNull(visit), kit, units, job)
                        : plan == null || visit == null ? null : sheet(fleet, plan, visit, kit, units),
                kit,
                plan == null || job != null ? null : done(truck.depot(), plan).get(name),
                finished(depot, plan, job == null ? visit : null),
                units,
                job,
                plan == null ? List.of() : due(plan, name));
    }

    private static List<DueItem> due(KeptPlan plan, String truck) {
        return plan.plan().dueItems().stream()
                .filter(item -> item.truck().equals(truck))
                .toList();
    }

    /** Sheet of a job that nobody planned: why it was started, then what is due at its truck. */
    private BaySheet jobSheet(
            FleetIndex fleet,
            @Nullable KeptPlan plan,
            Visit visit,
            Map<Integer, StockInjector> kit,
            SiteUnits units,
            BayJob job) {
        BaySheetMaker maker = plan == null
                ? new BaySheetMaker(fleet, visit.week().monday(), policy.get().orders(), units)
                : new BaySheetMaker(fleet, plan.plan(), units);
        List<String> seen = new ArrayList<>();
        seen.add((job.failed().size() == 1 ? "Cylinder " : "Cylinders ") + DisplayFormat.numbers(job.failed())
                + ": failed, found by " + job.startedBy() + (job.why().isEmpty() ? "" : ": " + job.why()));
        if (plan != null) {
            seen.addAll(maker.evidence(due(plan, job.truck())));
        }
        String start = DisplayFormat.dayAndTime(LocalDateTime.ofInstant(
                job.startedAt(), fleet.depot(job.depot()).timeZone()));
        return maker.ofJob(visit, bound(kit), start, seen, policy.get().coolant());
    }

    /** Now; of a visit that is over by the plan, its planned end. */
    private Finished finished(Depot depot, @Nullable KeptPlan plan, @Nullable Visit visit) {
        LocalDateTime now =
                LocalDateTime.ofInstant(clock.now(), depot.timeZone()).truncatedTo(ChronoUnit.MINUTES);
        if (plan != null && visit != null) {
            LocalDateTime end = DepotDays.find(plan.plan().days(), visit)
                    .map(DayPlan.Laid::end)
                    .orElse(null);
            if (end != null && end.isBefore(now)) {
                return new Finished(end.toLocalDate(), end.toLocalTime());
            }
            if (end == null && visit.week().sunday().isBefore(now.toLocalDate())) {
                return new Finished(plan.plan().today(), null);
            }
        }
        LocalDate today = today(depot, plan);
        return new Finished(today, now.toLocalTime());
    }

    private static BaySheet sheet(
            FleetIndex fleet, KeptPlan plan, Visit visit, Map<Integer, StockInjector> kit, SiteUnits units) {
        return new BaySheetMaker(fleet, plan.plan(), units).of(visit, bound(kit));
    }

    private static Map<Integer, CodedInjector> bound(Map<Integer, StockInjector> kit) {
        Map<Integer, CodedInjector> bound = new HashMap<>();
        kit.forEach((cylinder, row) -> bound.put(cylinder, new CodedInjector(row.serial(), row.code())));
        return bound;
    }

    /** Jobs that are open at a depot, the longest first. */
    List<BayJob> openJobs(String depot) {
        return jobs.listOpen(depot);
    }

    /** Something was kept: pages show it at once. */
    void changed() {
        fleets.changed();
    }

    SiteClock clock() {
        return clock;
    }

    static ResponseStatusException notThere() {
        return new ResponseStatusException(HttpStatus.NOT_FOUND);
    }

    /** The paper that the site prints on. */
    SiteForm.PaperSize paper() {
        return settings.form().paper();
    }
}
