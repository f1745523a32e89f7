package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** The shelf week by week, of every part that is needed, stocked, expected or advised. */
final class StockWeeks {
    private final Supply supply;
    private final Map<DepotPartKey, List<PartNeed>> needs = new TreeMap<>();
    private final Map<DepotPartKey, List<OrderLine>> orders = new TreeMap<>();

    StockWeeks(Supply supply, List<PartNeed> needs, List<OrderLine> orders) {
        this.supply = supply;
        needs.forEach(need -> this.needs
                .computeIfAbsent(new DepotPartKey(need.depot(), need.part()), shelf -> new ArrayList<>())
                .add(need));
        orders.forEach(line -> this.orders
                .computeIfAbsent(new DepotPartKey(line.depot(), line.part()), shelf -> new ArrayList<>())
                .add(line));
    }

    List<StockWeek> of(IsoWeek firstWeek, int weeks) {
        TreeSet<DepotPartKey> shelves = new TreeSet<>(supply.shelves());
        shelves.addAll(needs.keySet());
        shelves.addAll(orders.keySet());
        List<StockWeek> rows = new ArrayList<>();
        for (DepotPartKey shelf : shelves) {
            double start = supply.onHand(shelf);
            LocalDate counted = LocalDate.MIN;
            for (int ahead = 0; ahead < weeks; ahead++) {
                IsoWeek week = firstWeek.plus(ahead);
                LocalDate ready = supply.countedUntil(week);
                double arriving = supply.arriving(shelf, counted, ready);
                double ordered = ordered(shelf, counted, ready);
                double required = required(shelf, week);
                double end = Figures.tidy(start + arriving + ordered - required);
                rows.add(new StockWeek(shelf.depot(), shelf.part(), week, start, arriving, ordered, required, end));
                start = end;
                counted = ready;
            }
        }
        return rows;
    }

    private double ordered(DepotPartKey shelf, LocalDate after, LocalDate until) {
        return orders.getOrDefault(shelf, List.of()).stream()
                .filter(line -> line.thereBy().isAfter(after) && !line.thereBy().isAfter(until))
                .mapToDouble(OrderLine::quantity)
                .sum();
    }

    private double required(DepotPartKey shelf, IsoWeek week) {
        return needs.getOrDefault(shelf, List.of()).stream()
                .filter(need -> need.week().equals(week))
                .mapToDouble(PartNeed::required)
                .sum();
    }
}
