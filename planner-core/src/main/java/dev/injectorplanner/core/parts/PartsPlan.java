package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.allocation.Shipment;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.ConcentratePart;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Everything the buyer needs of a plan.
 *
 * @param rules how the site buys
 * @param needs parts by depot, week and part
 * @param shortList what an order placed today may not bring in time, by week, depot and truck
 * @param forecastKnown whether there is a forecast of unplanned need
 * @param unplannedNeeds stock for failures that no plan foresees, by depot and part
 * @param orders the order list, by the day to place
 * @param stockWeeks the shelves week by week, by depot and part
 * @param allocation which piece goes to which visit
 * @param overdue open order lines past their day, which count for nothing until a new day is confirmed
 * @param shelves every part at every depot: needed, there, on order, to order
 */
public record PartsPlan(
        OrderRules rules,
        List<PartNeed> needs,
        List<ShortLine> shortList,
        boolean forecastKnown,
        List<UnplannedNeed> unplannedNeeds,
        List<OrderLine> orders,
        List<StockWeek> stockWeeks,
        Allocation allocation,
        List<OverdueLine> overdue,
        List<ShelfState> shelves) {
    public PartsPlan {
        needs = List.copyOf(needs);
        shortList = List.copyOf(shortList);
        unplannedNeeds = List.copyOf(unplannedNeeds);
        orders = List.copyOf(orders);
        stockWeeks = List.copyOf(stockWeeks);
        allocation = allocation == null ? Allocation.NONE : allocation; // of plans kept before there was one
        overdue = overdue == null ? List.of() : List.copyOf(overdue);
        shelves = shelves == null ? List.of() : List.copyOf(shelves);
    }

    /** A plan without a need. */
    public static PartsPlan empty() {
        return new PartsPlan(
                OrderRules.standard(),
                List.of(),
                List.of(),
                false,
                List.of(),
                List.of(),
                List.of(),
                Allocation.NONE,
                List.of(),
                List.of());
    }

    /** As below, moving a visit costing what the rules say. */
    public static PartsPlan of(
            FleetIndex index,
            LocalDate today,
            int weeks,
            OrderRules rules,
            List<Visit> visits,
            FailureForecast forecast) {
        return of(index, today, weeks, rules, visits, forecast, PostponementCost.perWeek(rules));
    }

    /**
     * Works out what to buy for planned visits and for failures that no plan foresees.
     *
     * @param weeks weeks in the horizon, from the week of {@code today}
     * @param forecast what the risk model says, or {@link FailureForecast#NONE}
     * @param moving what moving a visit costs
     */
    public static PartsPlan of(
            FleetIndex index,
            LocalDate today,
            int weeks,
            OrderRules rules,
            List<Visit> visits,
            FailureForecast forecast,
            PostponementCost moving) {
        return of(index, today, weeks, rules, visits, forecast, moving, null, null);
    }

    /**
     * The same as the plan shares its stock.
     *
     * @param allocation which piece goes to which visit; null where nobody has shared it out yet: then visits take from
     *     their shelf by week, and what an order may not bring in time is told with a way out
     * @param coolant what the visits draw, for the concentrate to order; null where none is ordered
     */
    public static PartsPlan of(
            FleetIndex index,
            LocalDate today,
            int weeks,
            OrderRules rules,
            List<Visit> visits,
            FailureForecast forecast,
            PostponementCost moving,
            @Nullable Allocation allocation,
            @Nullable CoolantPlan coolant) {
        PartNeeds partNeeds = new PartNeeds(index, today, rules, allocation);
        ShortList shortList = new ShortList(index, today, rules, moving, partNeeds.supply());
        List<PartNeed> needs = new ArrayList<>();
        partNeeds
                .byShelf(visits)
                .forEach((shelf, byWeek) -> partNeeds.walk(shelf, byWeek, (need, steps) -> {
                    needs.add(need);
                    if (allocation == null) {
                        shortList.add(need, steps);
                    }
                }));
        if (allocation != null) {
            shipped(shortList, visits, allocation);
        }
        if (coolant != null) {
            ConcentratePart.of(index, coolant.rules())
                    .ifPresent(part -> needs.addAll(new ConcentrateNeeds(partNeeds.supply()).of(coolant, part)));
        }
        needs.sort(Comparator.comparing(PartNeed::depot)
                .thenComparing(PartNeed::week)
                .thenComparing(PartNeed::part));
        List<UnplannedNeed> unplanned = new UnplannedNeeds(index, today, rules, forecast, partNeeds).of(needs);
        List<OrderLine> orders = new OrderAdvice(index, today, rules).of(needs, unplanned);
        return new PartsPlan(
                rules,
                needs,
                shortList.lines(),
                forecast.known(),
                unplanned,
                orders,
                new StockWeeks(partNeeds.supply(), needs, orders).of(IsoWeek.of(today), weeks),
                allocation == null ? Allocation.NONE : allocation,
                OverdueLine.of(index, today),
                ShelfState.of(index, today, needs, unplanned, orders));
    }

    private static void shipped(ShortList shortList, List<Visit> visits, Allocation allocation) {
        Map<String, Visit> byName = new HashMap<>();
        visits.stream()
                .filter(visit -> !visit.cylinders().isEmpty())
                .forEach(visit -> byName.put(Allocation.visit(visit.truck(), visit.week()), visit));
        for (Shipment shipment : allocation.shipments()) {
            Visit visit = byName.get(Allocation.visit(shipment.truck(), shipment.week()));
            if (visit != null) {
                shortList.add(visit, shipment);
            }
        }
    }

    /** Transfers between depots that the plan proposes, by the day to send. */
    public List<Shipment> transfers() {
        return allocation.shipments().stream()
                .filter(shipment -> shipment.source() == PieceSource.TRANSFER)
                .toList();
    }
}
