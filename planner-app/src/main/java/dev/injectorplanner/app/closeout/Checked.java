package dev.injectorplanner.app.closeout;

import dev.injectorplanner.core.fleet.Truck;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * An entry that was found right.
 *
 * @param entry as entered
 * @param truck its truck
 * @param doneOn the day
 * @param labourHours hours worked
 * @param moment the moment of its reading and tests, at which the truck has no other
 * @param injectors new injectors, by cylinder as entered
 */
record Checked(
        CloseOutEntry entry,
        Truck truck,
        LocalDate doneOn,
        double labourHours,
        Instant moment,
        List<NewInjector> injectors) {}
