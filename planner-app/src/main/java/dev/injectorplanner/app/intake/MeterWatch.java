package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.usage.MeterRules;
import dev.injectorplanner.core.usage.MeterVerdict;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
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

    /** Before a reading is stored: looks up the truck's latest one. */
    void prepare(Reading reading) {
        latest.computeIfAbsent(reading.truck(), truck -> writer.findReadingBefore(truck, FOREVER));
    }

    /** After a new reading was stored. */
    void take(Reading reading) {
        Optional<Reading> last = latest.getOrDefault(reading.truck(), Optional.empty());
        boolean later = last.isEmpty() || last.get().takenAt().isBefore(reading.takenAt());
        Optional<Reading> previous = later ? last : writer.findReadingBefore(reading.truck(), reading.takenAt());
        if (later && reading.odometerKm() != null) {
            latest.put(reading.truck(), Optional.of(reading));
        }
        previous.ifPresent(before -> judge(before, reading));
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
            case ROLL_BACK -> "goes back (say yes in meter_replaced if the meter was replaced)";
            case IMPLAUSIBLE -> "goes on faster than any truck can";
            case MILES_FOR_KM -> "goes back as if miles were entered for km";
            case ROLL_OVER -> "passes from 999,999 to 0";
            case ACCEPTED, NO_USE, REPLACED -> "";
        };
    }

    private static String km(double km) {
        return Require.plain(Math.rint(km * 10) / 10) + " km";
    }
}
