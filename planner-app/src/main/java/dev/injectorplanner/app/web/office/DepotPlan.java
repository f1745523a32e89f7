package dev.injectorplanner.app.web.office;

import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.RecordsState;
import dev.injectorplanner.core.plan.SafetyCase;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.Schedule.BrokenWish;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the plan in force says of one depot.
 *
 * @param depot the depot
 * @param kept the plan, of this depot or of all, its sentences in the site's units
 * @param fleet the depot's trucks as stored now
 * @param units in which people of the site read
 * @param done day on which a truck was closed out since the plan was kept, by truck
 */
public record DepotPlan(String depot, KeptPlan kept, FleetIndex fleet, SiteUnits units, Map<String, LocalDate> done) {
    public DepotPlan {
        done = Map.copyOf(done);
    }

    /** Whether a truck was closed out since the plan was kept: what the plan asks of it is done. */
    public boolean isDone(String truck) {
        return done.containsKey(truck);
    }

    /** Whether a truck's visit of a week is done: of several, those up to the week in which it was closed out. */
    public boolean isDone(String truck, IsoWeek week) {
        LocalDate on = done.get(truck);
        return on != null
                && (IsoWeek.of(on).compareTo(week) >= 0
                        || PlanIndex.of(plan()).visitsAt(depot).stream()
                                        .filter(visit -> visit.truck().equals(truck))
                                        .count()
                                < 2);
    }

    public Plan plan() {
        return kept.plan();
    }

    /** The day the plan was made for: today, as far as its pages go. */
    public LocalDate today() {
        return plan().today();
    }

    public Depot site() {
        return fleet.depot(depot);
    }

    /** Trucks that are looked after here. */
    public Set<String> trucks() {
        return fleet.fleet().trucks().stream()
                .filter(truck -> truck.depot().equals(depot))
                .map(Truck::truck)
                .collect(Collectors.toSet());
    }

    public Optional<EngineFamily> findFamily(String family) {
        return fleet.fleet().engineFamilies().stream()
                .filter(each -> each.family().equals(family))
                .findFirst();
    }

    public List<Visit> visits() {
        return index().visitsAt(depot);
    }

    private PlanIndex index() {
        return PlanIndex.of(plan());
    }

    public List<Visit> visitsOf(IsoWeek week) {
        return visits().stream().filter(visit -> visit.week().equals(week)).toList();
    }

    /** The visit that a place on a day belongs to. */
    public Optional<Visit> findVisit(DayPlan.Laid laid) {
        IsoWeek week = IsoWeek.of(laid.start().toLocalDate());
        return visits().stream()
                .filter(visit -> visit.truck().equals(laid.truck())
                        && visit.diagnosis() == laid.diagnosis()
                        && visit.week().equals(week))
                .findFirst();
    }

    /** What the depot's records lack, and what somebody has to answer. */
    public RecordsState records() {
        return plan().records().of(depot);
    }

    /** Trucks here with an open safety fault. */
    public List<SafetyCase> safety() {
        return plan().safety().stream()
                .filter(each -> each.depot().equals(depot))
                .toList();
    }

    /** A truck's visit; its ordinary one where it has a diagnosis too. */
    public Optional<Visit> findVisit(String truck) {
        return index().findVisit(depot, truck);
    }

    public List<WeekLoad> loads() {
        return plan().loads().stream()
                .filter(load -> load.depot().equals(depot))
                .toList();
    }

    public Optional<WeekLoad> findLoad(IsoWeek week) {
        return loads().stream().filter(load -> load.week().equals(week)).findFirst();
    }

    public List<DueItem> dueItems() {
        return index().dueAt(depot);
    }

    public List<Unplanned> unplanned() {
        return plan().unplanned().stream()
                .filter(each -> each.depot().equals(depot))
                .toList();
    }

    public List<ShortLine> shortList() {
        return plan().parts().shortList().stream()
                .filter(line -> line.depot().equals(depot))
                .toList();
    }

    public List<BrokenWish> brokenWishes() {
        Set<String> here = trucks();
        return plan().cost().brokenWishes().stream()
                .filter(wish -> here.contains(wish.truck()))
                .toList();
    }

    /** Bay, day and hour of the visits of the first two weeks. */
    public DayPlan days() {
        return plan().days().stream()
                .filter(days -> days.depot().equals(depot))
                .map(DepotDays::days)
                .findFirst()
                .orElse(new DayPlan(List.of(), List.of()));
    }

    public Optional<TruckReason> findReason(String truck) {
        return index().findReason(truck);
    }

    public List<InjectorRisk> risksOf(String truck) {
        return index().risksOf(truck);
    }

    /** Chance that at least one injector of a truck fails within 12 weeks if nothing is done, 0..1. */
    public double chanceIn12Weeks(String truck) {
        return 1
                - risksOf(truck).stream()
                        .mapToDouble(risk -> 1 - risk.chance12())
                        .reduce(1, (one, other) -> one * other);
    }

    /** A visit's work in words. */
    public String work(Visit visit) {
        int cylinders = findFamily(visit.family()).map(EngineFamily::cylinders).orElse(0);
        return DisplayFormat.work(visit.cylinders(), cylinders, visit.inspection(), visit.tasks());
    }
}
