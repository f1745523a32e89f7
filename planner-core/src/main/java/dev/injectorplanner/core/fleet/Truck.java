package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One truck.
 *
 * @param truck its name in the tables
 * @param vin identification number, or null where it is not known
 * @param depot where it is looked after
 * @param family its engine
 * @param dutyGroup trucks that can replace it, or null
 * @param inServiceOn first day of service
 * @param outOfServiceOn day it left the fleet, or null; after {@code inServiceOn}
 * @param warrantyUntil last day of the truck's own warranty, or null
 * @param recordsSince failures of its injectors are on record from that day on; null: as its depot says
 */
public record Truck(
        String truck,
        @Nullable Vin vin,
        String depot,
        String family,
        @Nullable String dutyGroup,
        LocalDate inServiceOn,
        @Nullable LocalDate outOfServiceOn,
        @Nullable LocalDate warrantyUntil,
        @Nullable LocalDate recordsSince) {
    public Truck {
        truck = Require.name("truck", truck);
        depot = Require.name("depot", depot);
        family = Require.name("family", family);
        dutyGroup = Require.optionalName("duty_group", dutyGroup);
        if (outOfServiceOn != null && outOfServiceOn.isBefore(inServiceOn)) {
            throw new InvalidValueException(
                    "out_of_service_on",
                    outOfServiceOn,
                    "is before in_service_on " + inServiceOn,
                    "correct whichever is wrong");
        }
    }

    /** A truck whose records began as its depot says. */
    public Truck(
            String truck,
            @Nullable Vin vin,
            String depot,
            String family,
            @Nullable String dutyGroup,
            LocalDate inServiceOn,
            @Nullable LocalDate outOfServiceOn,
            @Nullable LocalDate warrantyUntil) {
        this(truck, vin, depot, family, dutyGroup, inServiceOn, outOfServiceOn, warrantyUntil, null);
    }

    /** Its identification number for people and papers; empty where it is not known. */
    public String vinText() {
        return vin == null ? "" : vin.text();
    }

    /** Whether the truck is in the fleet on a day. */
    public boolean inServiceAt(LocalDate day) {
        return !day.isBefore(inServiceOn) && (outOfServiceOn == null || day.isBefore(outOfServiceOn));
    }
}
