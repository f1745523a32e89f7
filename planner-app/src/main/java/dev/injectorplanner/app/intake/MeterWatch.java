package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.usage.MeterRules;
import dev.injectorplanner.core.usage.MeterVerdict;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Flags odometers that go back or run ahead: such a reading is kept, and is a replaced meter only when its row says so.
 */
final class MeterWatch {
    private static final double SECONDS_A_DAY = 86_400;
    private static final Instant FOREVER = Instant.parse("9999-12-31T00:00:00Z");

    private final StoreWriter writer;
    private final Map<String, Optional<Reading>> latest = new HashMap<>();
    private MeterRemarks remarks = new MeterRemarks(Path.of("readings"));

    MeterWatch(StoreWriter writer) {
        this.writer = writer;
    }

    /** Where to say it. */
    void listen(MeterRemarks to) {
        remarks = to;
    }

    /** Before readings are stored: looks up the latest one of each truck. */
    void prepare(List<Reading> readings) {
        for (Reading reading : readings) {
            latest.computeIfAbsent(reading.truck(), truck -> writer.findReadingBefore(truck, FOREVER));
        }
    }

    /**
     * After new readings were stored: judges each against the one before it, among these and what was stored before the
     * first of them. One look a truck at most, and none where they follow the truck's latest.
     */
    void take(List<Reading> added) {
        Map<String, List<Reading>> byTruck = new LinkedHashMap<>();
        added.forEach(reading -> byTruck.computeIfAbsent(reading.truck(), truck -> new ArrayList<>())
                .add(reading));
        byTruck.forEach(this::take);
    }

    private void take(String truck, List<Reading> added) {
        List<Reading> inTime =
                added.stream().sorted(Comparator.comparing(Reading::takenAt)).toList();
        Optional<Reading> last = latest.getOrDefault(truck, Optional.empty());
        Instant first = inTime.get(0).takenAt();
        boolean follows = last.isEmpty() || last.get().takenAt().isBefore(first);
        Optional<Reading> previous = follows ? last : writer.findReadingBefore(truck, first);
        for (Reading reading : inTime) {
            previous.ifPresent(before -> judge(before, reading));
            if (reading.odometerKm() != null) {
                previous = Optional.of(reading);
            }
        }
        Optional<Reading> end = previous;
        if (end.isPresent()
                && (last.isEmpty() || last.get().takenAt().isBefore(end.get().takenAt()))) {
            latest.put(truck, end);
        }
    }

    private void judge(Reading before, Reading reading) {
        Double was = before.odometerKm();
        Double is = reading.odometerKm();
        if (was == null || is == null) {
            return;
        }
        double days = Duration.between(before.takenAt(), reading.takenAt()).toSeconds() / SECONDS_A_DAY;
        String said = words(MeterRules.odometer(was, is, days, reading.meterReplaced()));
        if (!said.isEmpty()) {
            remarks.add("truck " + reading.truck() + ", odometer " + said + ", from " + km(was) + " of "
                    + before.takenAt() + " to " + km(is) + " of " + reading.takenAt() + ": kept and flagged");
        }
    }

    private static String words(MeterVerdict verdict) {
        return switch (verdict) {
            case ROLL_BACK -> "goes back (set meter_replaced to yes if the meter was replaced)";
            case IMPLAUSIBLE -> "rises faster than any truck can drive";
            case MILES_FOR_KM -> "goes back, as if miles were entered as km";
            case ROLL_OVER -> "rolls over from 999,999 to 0";
            case ACCEPTED, NO_USE, REPLACED -> "";
        };
    }

    private static String km(double km) {
        return Require.plain(Math.rint(km * 10) / 10) + " km";
    }
}
