package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which piece goes to which visit.
 *
 * @param pieces every piece, by depot, week, truck and part
 * @param shipments express and transfers, by the day to send
 * @param unmet visits whose kit cannot be complete in time; they were given nothing
 */
public record Allocation(List<AllocatedPieces> pieces, List<Shipment> shipments, List<KitNeed> unmet) {
    public static final Allocation NONE = new Allocation(List.of(), List.of(), List.of());

    public Allocation {
        pieces = pieces == null ? List.of() : List.copyOf(pieces); // a plan kept before there was one
        shipments = shipments == null ? List.of() : List.copyOf(shipments);
        unmet = unmet == null ? List.of() : List.copyOf(unmet);
    }

    /** What all shipments cost, beyond the parts. */
    public double cost() {
        return shipments.stream().mapToDouble(Shipment::cost).sum();
    }

    /** The day a visit's kit is complete, today or later, by truck and week as {@code "T1 2026-W10"}. */
    public Map<String, LocalDate> readyDays(LocalDate today) {
        Map<String, LocalDate> ready = new HashMap<>();
        for (AllocatedPieces each : pieces) {
            LocalDate day = each.readyOn().isBefore(today) ? today : each.readyOn();
            ready.merge(visit(each.truck(), each.week()), day, (one, other) -> one.isAfter(other) ? one : other);
        }
        return ready;
    }

    /** How {@link #readyDays} names a visit. */
    public static String visit(String truck, IsoWeek week) {
        return truck + " " + week;
    }
}
