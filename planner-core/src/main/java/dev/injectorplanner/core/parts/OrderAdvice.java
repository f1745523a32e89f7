package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.units.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Turns what is missing into orders. What must be ordered before the buyer looks again is ordered now; the rest waits for
 * the ISO week of its last day, and goes out with the supplier's other lines of that week on the earliest of their days.
 * Which lines go together depends on their days alone, so that asking for a higher service level never lowers what is
 * ordered now.
 */
final class OrderAdvice {
    /** Stands in for the supplier of a part that is not in the table of parts. */
    static final String NO_SUPPLIER = "not in the table of parts";

    private static final double ROUNDING = 1e-9;

    private final FleetIndex index;
    private final LocalDate today;
    private final OrderRules rules;
    private final Map<DepotPartKey, TreeMap<Key, Batch>> batches = new TreeMap<>();

    /** Pieces of one shelf that are ordered together. */
    private static final class Batch {
        double forVisits;
        double forReserve;
        LocalDate orderBy = LocalDate.MAX;

        @Nullable
        IsoWeek firstWeek;

        final TreeSet<String> trucks = new TreeSet<>();
    }

    /** What goes together: by the day to place, express first. */
    private record Key(LocalDate day, boolean express) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            int byDay = day.compareTo(other.day);
            return byDay != 0 ? byDay : Boolean.compare(other.express, express);
        }
    }

    private record Placed(DepotPartKey shelf, Key key, Batch batch, double leftOver, double quantity) {}

    OrderAdvice(FleetIndex index, LocalDate today, OrderRules rules) {
        this.index = index;
        this.today = today;
        this.rules = rules;
    }

    List<OrderLine> of(List<PartNeed> needs, List<UnplannedNeed> unplanned) {
        for (PartNeed need : needs) {
            LocalDate orderBy = need.orderBy();
            if (need.missing() > 0 && orderBy != null) {
                DepotPartKey shelf = new DepotPartKey(need.depot(), need.part());
                add(batch(shelf, today, true), need, need.express());
                add(batch(shelf, orderBy, false), need, need.missing() - need.express());
            }
        }
        for (UnplannedNeed need : unplanned) {
            if (need.missing() > 0) {
                batch(new DepotPartKey(need.depot(), need.part()), today, false).forReserve += need.missing();
            }
        }
        List<Placed> placed = new ArrayList<>();
        batches.forEach((shelf, byDay) -> placed.addAll(placed(shelf, byDay)));
        return lines(placed);
    }

    private static void add(Batch batch, PartNeed need, double pieces) {
        if (pieces > ROUNDING) {
            batch.forVisits += pieces;
            batch.trucks.addAll(need.trucks());
            batch.firstWeek = batch.firstWeek == null ? need.week() : batch.firstWeek;
        }
    }

    private Batch batch(DepotPartKey shelf, LocalDate orderBy, boolean express) {
        Batch batch = batches.computeIfAbsent(shelf, key -> new TreeMap<>())
                .computeIfAbsent(new Key(day(orderBy), express), key -> new Batch());
        batch.orderBy = orderBy.isBefore(batch.orderBy) ? orderBy : batch.orderBy;
        return batch;
    }

    /** Today for what is ordered now, else the Sunday of the week of ordering, which is always later. */
    private LocalDate day(LocalDate orderBy) {
        return orderBy.isAfter(today.plusDays(rules.reviewDays()))
                ? IsoWeek.of(orderBy).sunday()
                : today;
    }

    private List<Placed> placed(DepotPartKey shelf, TreeMap<Key, Batch> byDay) {
        Optional<Part> part = index.findPart(shelf.part());
        int pack = part.map(Part::pack).orElse(1);
        int least = part.map(Part::minimumOrder).orElse(0);
        List<Placed> placed = new ArrayList<>();
        double left = 0;
        for (Map.Entry<Key, Batch> entry : byDay.entrySet()) {
            double wanted = entry.getValue().forVisits + entry.getValue().forReserve - left;
            if (wanted > ROUNDING) {
                double quantity = Math.ceil(Math.max(wanted, least) / pack - ROUNDING) * pack;
                placed.add(new Placed(shelf, entry.getKey(), entry.getValue(), left, quantity));
                left = quantity - wanted;
            } else {
                left = Math.max(0, -wanted);
            }
        }
        return placed;
    }

    private List<OrderLine> lines(List<Placed> placed) {
        Map<String, LocalDate> together = new TreeMap<>();
        for (Placed each : placed) {
            together.merge(
                    supplier(each.shelf) + "\n" + each.key,
                    each.batch.orderBy,
                    (one, other) -> one.isBefore(other) ? one : other);
        }
        List<OrderLine> lines = new ArrayList<>();
        for (Placed each : placed) {
            LocalDate first = together.getOrDefault(supplier(each.shelf) + "\n" + each.key, each.batch.orderBy);
            boolean now = each.key.day.equals(today);
            lines.add(line(each, now || first.isBefore(today) ? today : first, now));
        }
        lines.sort(OrderLine.BY_DAY);
        return lines;
    }

    private String supplier(DepotPartKey shelf) {
        return index.findPart(shelf.part()).map(Part::supplier).orElse(NO_SUPPLIER);
    }

    private OrderLine line(Placed placed, LocalDate placeOn, boolean now) {
        Optional<Part> part = index.findPart(placed.shelf.part());
        return new OrderLine(
                supplier(placed.shelf),
                placed.shelf.part(),
                part.map(Part::description).orElse(""),
                placed.shelf.depot(),
                placeOn,
                placed.batch.orderBy,
                placeOn.plusDays(
                        placed.key.express
                                ? rules.expediteDays()
                                : part.map(Part::leadDaysMax).orElse(0)),
                now,
                Figures.tidy(placed.batch.forVisits),
                Figures.tidy(placed.batch.forReserve),
                Figures.tidy(placed.leftOver),
                placed.quantity,
                part.map(Part::pack).orElse(1),
                part.map(Part::minimumOrder).orElse(0),
                part.map(Part::price).orElse(BigDecimal.ZERO),
                part.map(Part::coreDeposit).orElse(BigDecimal.ZERO),
                placed.batch.firstWeek,
                List.copyOf(placed.batch.trucks),
                placed.key.express);
    }
}
