package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.vehicle.Episode;
import dev.injectorplanner.imports.vehicle.MeterReading;
import dev.injectorplanner.imports.vehicle.TruckLog;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a log says of one truck as rows. An episode that goes on where an earlier log ended is the stored one made longer, so
 * that a fault is not counted once a file; loading a log again then changes nothing.
 */
final class EpisodeRows {
    private final TruckLog log;
    private final StoreWriter writer;
    private @Nullable List<Reading> stored;

    EpisodeRows(TruckLog log, StoreWriter writer) {
        this.log = log;
        this.writer = writer;
    }

    List<Reading> readings() {
        return log.readings().stream().map(this::reading).toList();
    }

    private Reading reading(MeterReading reading) {
        return new Reading(log.truck(), reading.takenAt(), reading.odometerKm(), reading.engineHours(), false);
    }

    List<Fault> faults() {
        if (log.episodes().isEmpty()) {
            return List.of();
        }
        List<Fault> known = new ArrayList<>(writer.ofTrucks(Fault.class, List.of(log.truck())));
        known.removeIf(fault -> !fault.isEpisode());
        Map<List<Object>, Fault> rows = new LinkedHashMap<>();
        for (Episode episode : log.episodes()) {
            Fault found = fault(episode);
            Fault row = known.stream()
                    .filter(fault -> meets(fault, found))
                    .findFirst()
                    .map(fault -> joined(fault, found))
                    .orElse(found);
            known.removeIf(
                    fault -> fault.code().equals(row.code()) && fault.seenAt().equals(row.seenAt()));
            known.add(row);
            rows.put(List.of(row.seenAt(), row.code()), row);
        }
        return List.copyOf(rows.values());
    }

    private Fault fault(Episode episode) {
        Double km = episode.odometerKm();
        return new Fault(
                log.truck(),
                episode.first(),
                episode.code(),
                null,
                episode.count(),
                km == null ? between(episode.first()) : Double.valueOf(Math.rint(km * 10) / 10),
                episode.last());
    }

    private static boolean meets(Fault stored, Fault found) {
        Duration gap = Episode.GAP;
        return stored.code().equals(found.code())
                && !found.seenAt().isAfter(stored.until().plus(gap))
                && !found.until().isBefore(stored.seenAt().minus(gap));
    }

    /** The stored row keeps its key, so an earlier part of it that comes later is not added; nothing is counted again. */
    private static Fault joined(Fault stored, Fault found) {
        boolean within =
                !found.until().isAfter(stored.until()) && !found.seenAt().isBefore(stored.seenAt());
        boolean around =
                !found.until().isBefore(stored.until()) && !found.seenAt().isAfter(stored.seenAt());
        int count = within
                ? stored.count()
                : around || found.seenAt().isBefore(stored.seenAt())
                        ? Math.max(stored.count(), found.count())
                        : stored.count() + found.count() - 1;
        Instant last = found.until().isAfter(stored.until()) ? found.until() : stored.until();
        Double km = stored.odometerKm();
        return new Fault(
                stored.truck(),
                stored.seenAt(),
                stored.code(),
                stored.cylinder(),
                count,
                km == null && !found.seenAt().isBefore(stored.seenAt()) ? found.odometerKm() : km,
                last);
    }

    /** The odometer between the stored readings before and after a moment; null where there are not both. */
    private @Nullable Double between(Instant moment) {
        if (stored == null) {
            stored = writer.ofTrucks(Reading.class, List.of(log.truck())).stream()
                    .filter(reading -> reading.odometerKm() != null)
                    .sorted(Comparator.comparing(Reading::takenAt))
                    .toList();
        }
        Reading before = null;
        for (Reading after : stored) {
            Double next = after.odometerKm();
            if (after.takenAt().isAfter(moment)) {
                Double from = before == null ? null : before.odometerKm();
                if (before == null || from == null || next == null || next < from || after.meterReplaced()) {
                    return null;
                }
                double share = (double)
                                Duration.between(before.takenAt(), moment).toMillis()
                        / Duration.between(before.takenAt(), after.takenAt()).toMillis();
                return Math.rint((from + (next - from) * share) * 10) / 10;
            }
            before = after;
        }
        return null;
    }
}
