package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** A fleet's tables as they stood on an earlier day: what came later is taken away again. */
final class Cut {
    private Cut() {}

    static FleetSnapshot at(FleetSnapshot fleet, LocalDate day) {
        Instant end = day.atStartOfDay(ZoneOffset.UTC).toInstant();
        return new FleetSnapshot(
                fleet.depots(),
                fleet.capacity(),
                fleet.engineFamilies(),
                fleet.access(),
                fleet.dutyGroups(),
                fleet.trucks().stream()
                        .filter(truck -> truck.inServiceOn().isBefore(day))
                        .toList(),
                fleet.injectors().stream()
                        .filter(row -> row.fittedOn().isBefore(day))
                        .map(row -> undone(row, day))
                        .toList(),
                fleet.readings().stream()
                        .filter(row -> row.takenAt().isBefore(end))
                        .toList(),
                fleet.faults().stream()
                        .filter(row -> row.seenAt().isBefore(end))
                        .toList(),
                fleet.cylinderTests().stream()
                        .filter(row -> row.testedAt().isBefore(end))
                        .toList(),
                fleet.parts(),
                fleet.jobParts(),
                fleet.stock(),
                fleet.purchaseLines(),
                fleet.away(),
                fleet.intervals(),
                fleet.rules());
    }

    private static FittedInjector undone(FittedInjector row, LocalDate day) {
        LocalDate removedOn = row.removedOn();
        return removedOn == null || removedOn.isBefore(day)
                ? row
                : new FittedInjector(
                        row.truck(),
                        row.cylinder(),
                        row.part(),
                        row.serial(),
                        row.calibrationCode(),
                        row.origin(),
                        row.fittedOn(),
                        row.odometerKm(),
                        row.engineHours(),
                        null,
                        null,
                        null,
                        null);
    }
}
