package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;

/**
 * A shipment that a visit's kit needs: by express from its supplier, or from another depot.
 *
 * @param source {@link PieceSource#EXPRESS} or {@link PieceSource#TRANSFER}
 * @param from supplier, or the depot that gives
 * @param depot where it goes
 * @param truck the visit's truck
 * @param week the visit's ISO week
 * @param sendOn the last day to send a transfer so that it is in time; today for express
 * @param readyOn the day it is there
 * @param cost of the shipment, beyond the parts
 * @param pieces pieces by part
 */
public record Shipment(
        PieceSource source,
        String from,
        String depot,
        String truck,
        IsoWeek week,
        LocalDate sendOn,
        LocalDate readyOn,
        double cost,
        Map<String, Double> pieces) {
    /** By the day to send, then by depot, truck, week and supplier. */
    public static final Comparator<Shipment> BY_DAY = Comparator.comparing(Shipment::sendOn)
            .thenComparing(Shipment::depot)
            .thenComparing(Shipment::truck)
            .thenComparing(Shipment::week)
            .thenComparing(Shipment::source)
            .thenComparing(Shipment::from);

    public Shipment {
        pieces = Collections.unmodifiableMap(new TreeMap<>(pieces));
    }
}
