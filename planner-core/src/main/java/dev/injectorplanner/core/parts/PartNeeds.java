package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Needs of the planned visits by depot, week and part, held week by week against stock and open purchase lines.
 *
 * <p>What a week requires is what it adds to the pieces that cover all visits up to it with the service level: parts that
 * break by their chance share their luck, so two visits need less than twice what one does. A line arrives for the week
 * whose Monday is on or after its confirmed day, else its due day; one whose day has passed counts for nothing. What is
 * missing in a week is taken to be ordered for that week, so it is not missing again later. The order-by day counts back
 * the longest lead time, the cautious one.
 */
public final class PartNeeds {
    private static final double ROUNDING = 1e-9;
    private static final Comparator<Visit> MOST_PRESSING =
            Comparator.comparing(Visit::week).thenComparing(PartNeeds::firstDue).thenComparing(Visit::truck);

    private final VisitParts parts;
    private final Supply supply;
    private final OrderRules rules;
    private final LocalDate today;
    private final @Nullable NewPieces bought;

    /** Visits of a shelf up to and with one, and what they require together. */
    record Step(Visit visit, double needed, double required, double uncovered, double chance) {}

    public PartNeeds(FleetIndex index, LocalDate today, OrderRules rules) {
        this(index, today, rules, null);
    }

    /** @param allocation what each visit was given, or null to hold visits against the shelf week by week */
    PartNeeds(FleetIndex index, LocalDate today, OrderRules rules, @Nullable Allocation allocation) {
        this.parts = new VisitParts(index, today);
        this.supply = new Supply(index, today, allocation);
        this.rules = rules;
        this.today = today;
        this.bought = allocation == null ? null : new NewPieces(allocation);
    }

    private static LocalDate firstDue(Visit visit) {
        return visit.dueItems().stream()
                .map(DueItem::by)
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MAX);
    }

    /** Needs of visits by depot, week and part. */
    public List<PartNeed> of(List<Visit> visits) {
        List<PartNeed> rows = new ArrayList<>();
        byShelf(visits).forEach((shelf, weeks) -> walk(shelf, weeks, (need, steps) -> rows.add(need)));
        rows.sort(Comparator.comparing(PartNeed::depot)
                .thenComparing(PartNeed::week)
                .thenComparing(PartNeed::part));
        return rows;
    }

    /** What one visit takes of each part, by part number. */
    public Map<String, Kit> kitOf(Visit visit) {
        Map<String, Kit> kits = new TreeMap<>();
        parts.of(visit)
                .forEach((part, demand) ->
                        kits.put(part, new Kit(demand.expected(), demand.required(rules.serviceLevel()))));
        return kits;
    }

    /** A week's need with its visits, one by one. */
    interface Taker {
        void take(PartNeed need, List<Step> steps);
    }

    /** Visits of each shelf by week, the most pressing first. */
    NavigableMap<DepotPartKey, NavigableMap<IsoWeek, List<Visit>>> byShelf(List<Visit> visits) {
        NavigableMap<DepotPartKey, NavigableMap<IsoWeek, List<Visit>>> shelves = new TreeMap<>();
        visits.stream()
                .sorted(MOST_PRESSING)
                .forEach(visit -> parts.of(visit)
                        .keySet()
                        .forEach(part -> shelves.computeIfAbsent(
                                        new DepotPartKey(visit.depot(), part), shelf -> new TreeMap<>())
                                .computeIfAbsent(visit.week(), week -> new ArrayList<>())
                                .add(visit)));
        return shelves;
    }

    void walk(DepotPartKey shelf, NavigableMap<IsoWeek, List<Visit>> weeks, Taker taker) {
        StockDemand demand = new StockDemand();
        double ordered = 0;
        for (Map.Entry<IsoWeek, List<Visit>> entry : weeks.entrySet()) {
            IsoWeek week = entry.getKey();
            LocalDate ready = supply.countedUntil(week);
            double there = supply.until(shelf, ready) + ordered;
            double requiredBefore = demand.required(rules.serviceLevel());
            double neededBefore = demand.expected();
            List<Step> steps = new ArrayList<>();
            for (Visit visit : entry.getValue()) {
                steps.add(step(shelf, demand, visit, there));
            }
            double uncovered = Figures.tidy(
                    steps.stream().mapToDouble(Step::uncovered).max().orElse(0));
            double missing = bought == null ? uncovered : bought.all(shelf, week);
            double express = bought == null ? 0 : bought.express(shelf, week);
            ordered += missing;
            taker.take(
                    new PartNeed(
                            shelf.depot(),
                            week,
                            shelf.part(),
                            Figures.tidy(demand.expected() - neededBefore),
                            Figures.tidy(demand.required(rules.serviceLevel()) - requiredBefore),
                            Figures.tidy(there - requiredBefore),
                            supply.arriving(shelf, supply.dayBefore(week), ready),
                            missing,
                            missing > 0 ? orderBy(shelf, week, express) : null,
                            trucks(entry.getValue()),
                            express),
                    steps);
        }
    }

    /** As shared, orders are in time by themselves: none is late. */
    private LocalDate orderBy(DepotPartKey shelf, IsoWeek week, double express) {
        LocalDate day = supply.orderBy(shelf.part(), week.monday());
        return bought != null && (express > 0 || day.isBefore(today)) ? today : day;
    }

    private Step step(DepotPartKey shelf, StockDemand demand, Visit visit, double there) {
        double requiredBefore = demand.required(rules.serviceLevel());
        double neededBefore = demand.expected();
        parts.of(visit, (part, times, quantity, chance) -> {
            if (part.equals(shelf.part())) {
                demand.add(times, quantity, chance);
            }
        });
        double required = demand.required(rules.serviceLevel());
        double gap = required - there;
        return new Step(
                visit,
                demand.expected() - neededBefore,
                required - requiredBefore,
                gap > ROUNDING ? gap : 0,
                gap > ROUNDING ? demand.chanceAbove(there, rules.serviceLevel()) : 0);
    }

    private static List<String> trucks(List<Visit> visits) {
        return visits.stream().map(Visit::truck).sorted().distinct().toList();
    }

    Supply supply() {
        return supply;
    }

    VisitParts parts() {
        return parts;
    }
}
