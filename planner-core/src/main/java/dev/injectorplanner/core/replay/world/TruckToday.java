package dev.injectorplanner.core.replay.world;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import java.time.LocalDate;
import java.util.List;

/**
 * A real truck as it stands today, to be played forward.
 *
 * @param truck its row; the day it leaves the fleet is kept
 * @param family place of its family in the scenario's list
 * @param kmPerWeek usual km a week, above 0
 * @param cylinders what sits in its cylinders, in their order
 */
public record TruckToday(Truck truck, int family, double kmPerWeek, List<Fitted> cylinders) {
    public TruckToday {
        Require.positive("km_per_week", kmPerWeek);
        cylinders = List.copyOf(cylinders);
    }

    /**
     * An injector in service.
     *
     * @param ageKm km since fitting
     * @param origin new or reman
     * @param fittedOn day it went in
     * @param multiplier on its hazard, for what faults and tests say of it, above 0
     */
    public record Fitted(double ageKm, Origin origin, LocalDate fittedOn, double multiplier) {
        public Fitted {
            Require.notNegative("age_km", ageKm);
            Require.positive("multiplier", multiplier);
        }
    }
}
