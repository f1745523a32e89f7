package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.KitNeed;
import dev.injectorplanner.core.coolant.CoolantNeed;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.coolant.CoolantWeek;
import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.OverdueLine;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.parts.ShelfState;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.parts.StockWeek;
import dev.injectorplanner.core.parts.UnplannedNeed;
import dev.injectorplanner.core.risk.ExpectedFailures;
import dev.injectorplanner.core.risk.FailureBand;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.Schedule.BrokenWish;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One depot's part of a plan: its trucks, visits, parts, cores, claims and coolant. What the whole fleet teaches (lives, effects
 * of signs, inspections), what the plan takes as given, and its cost and gap stay as they are.
 */
public final class DepotPart {
    private final Plan plan;
    private final String depot;
    private final Set<String> trucks;

    private DepotPart(Plan plan, String depot, Set<String> trucks) {
        this.plan = plan;
        this.depot = depot;
        this.trucks = trucks;
    }

    /**
     * Cuts a plan down.
     *
     * @param plan of that depot or of all
     * @param fleet holds the depot's trucks; others are passed over
     * @param depot which part
     */
    public static Plan of(Plan plan, FleetSnapshot fleet, String depot) {
        Set<String> trucks = fleet.trucks().stream()
                .filter(truck -> truck.depot().equals(depot))
                .map(Truck::truck)
                .collect(Collectors.toSet());
        return new DepotPart(plan, depot, trucks).cut();
    }

    private Plan cut() {
        return new Plan(
                plan.today(),
                plan.firstWeek(),
                plan.weeks(),
                cost(),
                ofTrucks(plan.injectors(), InjectorAge::truck),
                here(plan.risks(), InjectorRisk::depot),
                plan.lives(),
                plan.signEffects(),
                plan.inspections(),
                here(plan.expectedFailures(), ExpectedFailures::depot),
                here(plan.dueItems(), DueItem::depot),
                here(plan.visits(), Visit::depot),
                ofTrucks(plan.reasons(), TruckReason::truck),
                here(plan.unplanned(), Unplanned::depot),
                here(plan.days(), DepotDays::depot),
                here(plan.loads(), WeekLoad::depot),
                parts(),
                here(plan.cores(), CoreOwed::depot),
                here(plan.claims(), WarrantyClaim::depot),
                coolant(),
                plan.assumptions(),
                here(plan.safety(), SafetyCase::depot),
                plan.lifeChanges(),
                here(plan.failureBands(), FailureBand::depot),
                plan.records().of(depot));
    }

    private PlanCost cost() {
        PlanCost all = plan.cost();
        return new PlanCost(
                all.cost(),
                all.money(),
                all.weights(),
                all.bound(),
                all.gap(),
                ofTrucks(all.brokenWishes(), BrokenWish::truck),
                all.stop());
    }

    private PartsPlan parts() {
        PartsPlan all = plan.parts();
        return new PartsPlan(
                all.rules(),
                here(all.needs(), PartNeed::depot),
                here(all.shortList(), ShortLine::depot),
                all.forecastKnown(),
                here(all.unplannedNeeds(), UnplannedNeed::depot),
                here(all.orders(), OrderLine::depot),
                here(all.stockWeeks(), StockWeek::depot),
                new Allocation(
                        all.allocation().pieces().stream()
                                .filter(each -> each.depot().equals(depot) || depot.equals(each.fromDepot()))
                                .toList(),
                        all.allocation().shipments().stream()
                                .filter(each -> each.depot().equals(depot)
                                        || each.from().equals(depot))
                                .toList(),
                        here(all.allocation().unmet(), KitNeed::depot)),
                here(all.overdue(), OverdueLine::depot),
                here(all.shelves(), ShelfState::depot));
    }

    private CoolantPlan coolant() {
        CoolantPlan all = plan.coolant();
        return new CoolantPlan(
                all.rules(), here(all.needs(), CoolantNeed::depot), here(all.weeks(), CoolantWeek::depot));
    }

    private <R> List<R> here(List<R> rows, Function<R, String> depotOf) {
        return rows.stream().filter(row -> depotOf.apply(row).equals(depot)).toList();
    }

    private <R> List<R> ofTrucks(List<R> rows, Function<R, String> truckOf) {
        return rows.stream().filter(row -> trucks.contains(truckOf.apply(row))).toList();
    }
}
