package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Reading;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Flags odometers that go back: such a reading is kept, and is a replaced meter only when its row says so. */
final class MeterWatch {
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
        previous.filter(before -> goesBack(before, reading)).ifPresent(before -> remarks.add(words(before, reading)));
    }

    private static boolean goesBack(Reading before, Reading reading) {
        Double was = before.odometerKm();
        Double is = reading.odometerKm();
        return was != null && is != null && is < was && !reading.meterReplaced();
    }

    private static String words(Reading before, Reading reading) {
        return "truck " + reading.truck() + ", odometer goes back from " + km(before) + " of " + before.takenAt()
                + " to "
                + km(reading) + " of " + reading.takenAt()
                + ": kept and flagged; load the row with meter_replaced yes if the meter was replaced";
    }

    private static String km(Reading reading) {
        Double km = reading.odometerKm();
        return (km == null ? "?" : Require.plain(Math.rint(km * 10) / 10)) + " km";
    }
}
