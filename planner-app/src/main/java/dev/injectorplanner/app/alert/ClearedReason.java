package dev.injectorplanner.app.alert;

import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.Truck;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;

/** Why something is no longer due, as far as the fleet's history tells. */
final class ClearedReason {
    /** Nothing was done that would end it for good: it may be found again tomorrow. */
    static final String NOT_FOUND = "no longer due";

    private static final int NONE = 0;
    private static final int ANY = -1;

    private final LocalDate today;
    private final Map<String, Truck> trucks = new HashMap<>();
    private final Map<String, LocalDate> fitted = new HashMap<>();
    private final Map<String, Instant> tested = new HashMap<>();
    private final Map<String, Repair> repaired = new HashMap<>();

    ClearedReason(FleetSnapshot fleet, LocalDate today) {
        this.today = today;
        fleet.trucks().forEach(truck -> trucks.put(truck.truck(), truck));
        for (FittedInjector injector : fleet.injectors()) {
            fitted.merge(
                    place(injector.truck(), injector.cylinder()), injector.fittedOn(), (a, b) -> a.isAfter(b) ? a : b);
            fitted.merge(place(injector.truck(), ANY), injector.fittedOn(), (a, b) -> a.isAfter(b) ? a : b);
        }
        for (Repair repair : fleet.repairs()) {
            repaired.merge(repair.truck(), repair, (a, b) -> b.doneOn().isBefore(a.doneOn()) ? a : b);
        }
        for (CylinderTest test : fleet.cylinderTests()) {
            tested.merge(test.truck(), test.testedAt(), (a, b) -> a.isAfter(b) ? a : b);
        }
    }

    static String replaced(LocalDate on) {
        return "injector replaced on " + on;
    }

    static String tested(LocalDate on) {
        return "tested on " + on;
    }

    /** False where another depot has the truck now: its plan knows. */
    boolean knows(Alert alert) {
        return trucks.containsKey(String.valueOf(alert.truck()));
    }

    /** In words; starts with {@link #NOT_FOUND} where nothing was done. */
    String to(Alert alert) {
        String name = String.valueOf(alert.truck());
        Truck truck = trucks.get(name);
        LocalDate out = truck == null ? null : truck.outOfServiceOn();
        if (out != null && !out.isAfter(today)) {
            return "truck out of service since " + out;
        }
        LocalDate raisedOn = alert.raisedAt().atZone(ZoneOffset.UTC).toLocalDate();
        boolean mustNotWait = alert.rule().equals(DueKind.SAFETY.name());
        Integer cylinder = alert.cylinder();
        LocalDate since = fitted.get(place(name, cylinder != null ? cylinder : mustNotWait ? ANY : NONE));
        if (since != null && !since.isBefore(raisedOn)) {
            return replaced(since);
        }
        Repair repair = mustNotWait || alert.rule().equals(DueKind.FAULTS.name()) ? repaired.get(name) : null;
        if (repair != null && !repair.doneOn().isBefore(raisedOn)) {
            return "repaired on " + repair.doneOn() + ": " + repair.what();
        }
        if (mustNotWait) {
            return NOT_FOUND + " by the plan of " + today
                    + ": not seen within the rule's window; check that it is repaired";
        }
        Instant test = tested.get(name);
        if (test != null && test.isAfter(alert.raisedAt()) && "INSPECT".equals(alert.action())) {
            return tested(test.atZone(ZoneOffset.UTC).toLocalDate());
        }
        return NOT_FOUND + " by the plan of " + today + ": the values since then are within the limit";
    }

    private static String place(String truck, int cylinder) {
        return truck + "\n" + cylinder;
    }
}
