package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
 */
public record PartsPlan(
        OrderRules rules,
        List<PartNeed> needs,
        List<ShortLine> shortList,
        boolean forecastKnown,
        List<UnplannedNeed> unplannedNeeds,
        List<OrderLine> orders,
        List<StockWeek> stockWeeks) {
    public PartsPlan {
        needs = List.copyOf(needs);
        shortList = List.copyOf(shortList);
        unplannedNeeds = List.copyOf(unplannedNeeds);
        orders = List.copyOf(orders);
        stockWeeks = List.copyOf(stockWeeks);
    }

    /** A plan without a need. */
    public static PartsPlan empty() {
        return new PartsPlan(OrderRules.standard(), List.of(), List.of(), false, List.of(), List.of(), List.of());
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
        PartNeeds partNeeds = new PartNeeds(index, today, rules);
        ShortList shortList = new ShortList(index, today, rules, moving, partNeeds.supply());
        List<PartNeed> needs = new ArrayList<>();
        partNeeds
                .byShelf(visits)
                .forEach((shelf, byWeek) -> partNeeds.walk(shelf, byWeek, (need, steps) -> {
                    needs.add(need);
                    shortList.add(need, steps);
                }));
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
                new StockWeeks(partNeeds.supply(), needs, orders).of(IsoWeek.of(today), weeks));
    }
}
